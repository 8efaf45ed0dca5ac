package org.potlife.simulation;

import java.util.Arrays;

/**
 * Busy times of the people at the mixers (R12). A job lies within one staffed stretch. Bookings of
 * a run that turns out not to fit are taken back by {@link #rollback}.
 */
final class MixerBook {

  private final StaffedTime staffed;
  private final Intervals[] lanes;
  private int[] journal = new int[48];
  private int journaled;
  private int lane;
  private int lookedSince = StaffedTime.NEVER;

  MixerBook(InkRoomSpec room) {
    staffed = room.staffed();
    lanes = new Intervals[room.mixers()];
    for (int i = 0; i < lanes.length; i++) {
      lanes[i] = new Intervals();
    }
  }

  void copyFrom(MixerBook other) {
    for (int i = 0; i < lanes.length; i++) {
      lanes[i].copyFrom(other.lanes[i]);
    }
  }

  /** Takes over what another has before a moment, and keeps its own from then on. */
  void copyBefore(MixerBook other, int moment) {
    for (int i = 0; i < lanes.length; i++) {
      lanes[i].copyBefore(other.lanes[i], moment);
    }
  }

  /** Keeps its own before a moment, and takes over what another has from then on. */
  void copySince(MixerBook other, int moment) {
    for (int i = 0; i < lanes.length; i++) {
      lanes[i].copySince(other.lanes[i], moment);
    }
  }

  /** Whether each mixer is busy at the same times from a moment on. */
  boolean sameSince(MixerBook other, int since) {
    for (int i = 0; i < lanes.length; i++) {
      if (!lanes[i].sameSince(other.lanes[i], since)) {
        return false;
      }
    }
    return true;
  }

  /** Bookings from here on can be taken back. */
  void mark() {
    journaled = 0;
  }

  /** Takes back all bookings since the mark. */
  void rollback() {
    for (int i = journaled - 3; i >= 0; i -= 3) {
      lanes[journal[i]].free(journal[i + 1], journal[i + 2]);
    }
    journaled = 0;
  }

  /** Forgets how far back it was looked. */
  void lookAfresh() {
    lookedSince = StaffedTime.NEVER;
  }

  /** What lies before this has had no influence since {@link #lookAfresh}, s. */
  int lookedSince() {
    return lookedSince;
  }

  /** Latest start of a job that ends by {@code deadline} and starts not before; -1 if none. */
  int latest(int notBefore, int deadline, int length) {
    int best = -1;
    for (int i = 0; i < lanes.length; i++) {
      int start = latestOn(lanes[i], notBefore, deadline, length);
      if (start > best) {
        best = start;
        lane = i;
      }
    }
    lookedSince = Math.min(lookedSince, best < 0 ? notBefore : best);
    return best;
  }

  private int latestOn(Intervals busy, int notBefore, int deadline, int length) {
    int end = deadline;
    int stretch = Math.min(staffed.stretchAt(deadline - 1), staffed.count() - 1);
    while (stretch >= 0 && end - length >= notBefore) {
      if (staffed.start(stretch) > end - length) {
        stretch--;
        continue;
      }
      end = Math.min(end, staffed.end(stretch));
      int free = busy.latestEnd(end, length);
      if (free - length >= staffed.start(stretch)) {
        return free - length >= notBefore ? free - length : -1;
      }
      end = free;
      stretch--;
    }
    return -1;
  }

  /** Earliest end of a job that starts not before; {@link StaffedTime#NEVER} if none. */
  int earliestEnd(int notBefore, int length) {
    lookedSince = Math.min(lookedSince, notBefore);
    int best = StaffedTime.NEVER;
    for (int i = 0; i < lanes.length; i++) {
      int end = earliestEndOn(lanes[i], notBefore, length);
      if (end < best) {
        best = end;
        lane = i;
      }
    }
    return best;
  }

  private int earliestEndOn(Intervals busy, int notBefore, int length) {
    int at = notBefore;
    for (int stretch = staffed.stretchAt(at); stretch < staffed.count(); stretch++) {
      at = busy.earliest(Math.max(at, staffed.start(stretch)), length);
      if (at + length <= staffed.end(stretch)) {
        return at + length;
      }
    }
    return StaffedTime.NEVER;
  }

  /** Which mixer the last {@link #latest} or {@link #earliestEnd} found. */
  int lane() {
    return lane;
  }

  void book(int mixer, int from, int to) {
    lanes[mixer].book(from, to);
    if (journaled + 3 > journal.length) {
      journal = Arrays.copyOf(journal, journal.length * 2);
    }
    journal[journaled++] = mixer;
    journal[journaled++] = from;
    journal[journaled++] = to;
  }

  /** Takes a booking back. */
  void free(int mixer, int from, int to) {
    lanes[mixer].free(from, to);
  }
}
