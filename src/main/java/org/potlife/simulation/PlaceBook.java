package org.potlife.simulation;

/**
 * Busy times of the places of one kind in the screen room, kept in staffed seconds: hands-on work
 * pauses while nobody is there (R8).
 *
 * <p>The screen room works far ahead of the presses, so a place is mostly busy without a gap up to
 * some moment. That stretch is one number, {@code packed}: gaps too short for any work count as
 * busy. Only what lies behind it is kept as intervals.
 */
final class PlaceBook {

  private final StaffedTime staffed;
  private final int shortestWork;
  private final Intervals[] lanes;
  private final int[] packed;
  private int lane;
  private int startWork;

  /**
   * @param shortestWork nothing shorter is ever asked for, staffed seconds
   */
  PlaceBook(StaffedTime staffed, int places, int shortestWork) {
    this.staffed = staffed;
    this.shortestWork = shortestWork;
    lanes = new Intervals[places];
    packed = new int[places];
    for (int i = 0; i < places; i++) {
      lanes[i] = new Intervals();
    }
  }

  void copyFrom(PlaceBook other) {
    System.arraycopy(other.packed, 0, packed, 0, packed.length);
    for (int i = 0; i < lanes.length; i++) {
      lanes[i].copyFrom(other.lanes[i]);
    }
  }

  /** Books work as early as possible and tells when it ends, seconds. */
  int work(int notBefore, int length) {
    int from = staffed.workAt(notBefore);
    startWork = Integer.MAX_VALUE;
    for (int i = 0; i < lanes.length; i++) {
      int earliest = Math.max(from, packed[i]);
      if (earliest < startWork) {
        int start = lanes[i].earliest(earliest, length, startWork);
        if (start < startWork) {
          startWork = start;
          lane = i;
        }
      }
    }
    int end = length == 0 ? notBefore : staffed.endOf(startWork + length);
    if (end < StaffedTime.NEVER) {
      lanes[lane].book(startWork, startWork + length);
      pack(lane);
    }
    return end;
  }

  private void pack(int at) {
    packed[at] = lanes[at].packed(packed[at], shortestWork);
  }

  /** Takes the last {@link #work} back, while nothing else was booked here. */
  void undo(int atLane, int startedWork, int length) {
    int end = startedWork + length;
    int packedTo = packed[atLane];
    if (startedWork < packedTo) {
      lanes[atLane].book(startedWork, packedTo);
      packed[atLane] = startedWork;
    }
    lanes[atLane].free(startedWork, end);
  }

  /** Enters work that is under way. */
  void block(int place, int from, int to) {
    lanes[place].book(staffed.workAt(from), staffed.workAt(to));
    pack(place);
  }

  /** Place of the last {@link #work}, from 0. */
  int lane() {
    return lane;
  }

  /** Start of the last {@link #work} in staffed seconds. */
  int startWork() {
    return startWork;
  }
}
