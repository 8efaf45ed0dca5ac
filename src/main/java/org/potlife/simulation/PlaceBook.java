package org.potlife.simulation;

/**
 * Busy times of the places of one kind in the screen room, kept in staffed seconds: hands-on work
 * pauses while nobody is there (R8).
 */
final class PlaceBook {

  private final StaffedTime staffed;
  private final Intervals[] lanes;
  private int lane;
  private int startWork;

  PlaceBook(StaffedTime staffed, int places) {
    this.staffed = staffed;
    lanes = new Intervals[places];
    for (int i = 0; i < places; i++) {
      lanes[i] = new Intervals();
    }
  }

  void copyFrom(PlaceBook other) {
    for (int i = 0; i < lanes.length; i++) {
      lanes[i].copyFrom(other.lanes[i]);
    }
  }

  /** Books work as early as possible and tells when it ends, seconds. */
  int work(int notBefore, int length) {
    int from = staffed.workAt(notBefore);
    startWork = Integer.MAX_VALUE;
    for (int i = 0; i < lanes.length; i++) {
      int start = lanes[i].earliest(from, length);
      if (start < startWork) {
        startWork = start;
        lane = i;
      }
    }
    int end = length == 0 ? notBefore : staffed.endOf(startWork + length);
    if (end < StaffedTime.NEVER) {
      lanes[lane].book(startWork, startWork + length);
    }
    return end;
  }

  /** Takes the last {@link #work} back, while nothing else was booked here. */
  void undo(int atLane, int startedWork, int length) {
    lanes[atLane].free(startedWork, startedWork + length);
  }

  /** Enters work that is under way. */
  void block(int place, int from, int to) {
    lanes[place].book(staffed.workAt(from), staffed.workAt(to));
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
