package org.potlife.simulation;

/** Frames of one mesh that are free or come back at a known time, soonest first (R8). */
final class FrameBook {

  private final int[] freeAt;
  private int count;

  FrameBook(int owned) {
    freeAt = new int[owned];
    count = owned;
  }

  /** Only these are there, ascending by the time when they are free. */
  void begin(int[] free) {
    count = Math.min(free.length, freeAt.length);
    System.arraycopy(free, 0, freeAt, 0, count);
  }

  void copyFrom(FrameBook other) {
    count = other.count;
    System.arraycopy(other.freeAt, 0, freeAt, 0, count);
  }

  /** When so many frames are free, or {@link StaffedTime#NEVER}. */
  int availableAt(int frames) {
    return frames == 0 ? 0 : frames > count ? StaffedTime.NEVER : freeAt[frames - 1];
  }

  /** Takes the frames that are free soonest; at most those that are there. */
  void take(int wanted) {
    int frames = Math.min(wanted, count);
    System.arraycopy(freeAt, frames, freeAt, 0, count - frames);
    count -= frames;
  }

  /** Gives a frame back. */
  void giveBack(int at) {
    if (count == freeAt.length) {
      return;
    }
    int i = count;
    while (i > 0 && freeAt[i - 1] > at) {
      freeAt[i] = freeAt[i - 1];
      i--;
    }
    freeAt[i] = at;
    count++;
  }
}
