package org.potlife.simulation;

import java.util.Arrays;

/**
 * Frames of one mesh that are free or come back at a known time, soonest first (R8). Frames with
 * the same time share an entry: at the start that is the whole stock.
 */
final class FrameBook {

  private final int owned;
  private int[] time = new int[16];
  private int[] frames = new int[16];
  private int first;
  private int end;
  private int count;

  FrameBook(int owned) {
    this.owned = owned;
    add(0, owned);
  }

  /** Only these are there, ascending by the time when they are free. */
  void begin(int[] free) {
    first = 0;
    end = 0;
    count = 0;
    for (int i = 0; i < Math.min(free.length, owned); i++) {
      add(free[i], 1);
    }
  }

  void copyFrom(FrameBook other) {
    first = 0;
    end = other.end - other.first;
    count = other.count;
    if (end > time.length) {
      time = new int[other.time.length];
      frames = new int[other.time.length];
    }
    System.arraycopy(other.time, other.first, time, 0, end);
    System.arraycopy(other.frames, other.first, frames, 0, end);
  }

  /** When so many frames are free, or {@link StaffedTime#NEVER}. */
  int availableAt(int wanted) {
    if (wanted == 0) {
      return 0;
    }
    if (wanted > count) {
      return StaffedTime.NEVER;
    }
    int at = first;
    int sum = frames[at];
    while (sum < wanted) {
      at++;
      sum += frames[at];
    }
    return time[at];
  }

  /** Takes the frames that are free soonest; at most those that are there. */
  void take(int wanted) {
    int left = Math.min(wanted, count);
    count -= left;
    while (left > 0 && frames[first] <= left) {
      left -= frames[first];
      first++;
    }
    if (left > 0) {
      frames[first] -= left;
    }
  }

  /** Gives a frame back. */
  void giveBack(int at) {
    if (count < owned) {
      add(at, 1);
    }
  }

  private void add(int at, int number) {
    if (number == 0) {
      return;
    }
    count += number;
    int place = end;
    while (place > first && time[place - 1] > at) {
      place--;
    }
    if (place > first && time[place - 1] == at) {
      frames[place - 1] += number;
      return;
    }
    place -= makeRoom();
    System.arraycopy(time, place, time, place + 1, end - place);
    System.arraycopy(frames, place, frames, place + 1, end - place);
    time[place] = at;
    frames[place] = number;
    end++;
  }

  /** Room for one more entry; tells by how many places the entries moved down. */
  private int makeRoom() {
    if (end < time.length) {
      return 0;
    }
    int down = first;
    if (down > 0) {
      System.arraycopy(time, first, time, 0, end - first);
      System.arraycopy(frames, first, frames, 0, end - first);
      end -= down;
      first = 0;
    } else {
      time = Arrays.copyOf(time, end * 2);
      frames = Arrays.copyOf(frames, end * 2);
    }
    return down;
  }
}
