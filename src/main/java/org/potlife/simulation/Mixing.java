package org.potlife.simulation;

/**
 * The batches that must be made for one first stroke, each a job of its own on some mixer, as late
 * as stroke, stand time and mixers allow (R12, R13a). Ink with agent is made on the day of its use
 * (R11) and must live on beyond the first stroke (R10); ink without may be made the evening before.
 *
 * <p>Jobs are laid from the stroke backwards, the shortest stand time first: for deadlines alone
 * that order finds a place for all if there is one (Jackson's rule, seen from the end).
 */
final class Mixing {

  private final InkSpec[] inks;
  private final InkRoomSpec room;
  private final int[] dayStart;
  private final int[] ink;
  private final int[] start;
  private final int[] mixer;
  private int count;
  private int booked;

  Mixing(Problem problem) {
    inks = problem.inks();
    room = problem.inkRoom();
    dayStart = problem.dayStart();
    ink = new int[inks.length];
    start = new int[inks.length];
    mixer = new int[inks.length];
  }

  void clear() {
    count = 0;
    booked = 0;
  }

  /** Adds an ink; those that stand longest come first. */
  void add(int needed) {
    ink[count++] = needed;
  }

  int count() {
    return count;
  }

  int ink(int job) {
    return ink[job];
  }

  int start(int job) {
    return start[job];
  }

  int mixer(int job) {
    return mixer[job];
  }

  /** When the batch of a job is done: the clock of an activated ink starts here. */
  int done(int job) {
    return start[job] + length(ink[job]);
  }

  int length(int of) {
    return room.mixS() + (inks[of].activated() ? room.activateS() : 0);
  }

  /** Earliest start of a batch that is to serve at {@code t}. */
  int notBefore(int of, int t, int day) {
    if (!inks[of].activated()) {
      return room.eveningBefore(dayStart[day]);
    }
    int alive = t - length(of) - inks[of].potLifeS() + 1;
    return Math.max(0, Math.max(dayStart[day], alive));
  }

  /** Books all jobs for a first stroke at {@code t}; false, and nothing booked, if not possible. */
  boolean book(MixerBook mixers, int t, int day) {
    for (int job = count - 1; job >= 0; job--) {
      int from =
          mixers.latest(notBefore(ink[job], t, day), t - inks[ink[job]].standS(), length(ink[job]));
      if (from < 0) {
        undo(mixers);
        return false;
      }
      book(mixers, job, mixers.lane(), from);
    }
    return true;
  }

  private void book(MixerBook mixers, int job, int lane, int from) {
    start[job] = from;
    mixer[job] = lane;
    mixers.book(lane, from, from + length(ink[job]));
    booked++;
  }

  /** Takes back what {@link #book} booked. */
  void undo(MixerBook mixers) {
    for (int job = count - booked; job < count; job++) {
      mixers.free(mixer[job], start[job], start[job] + length(ink[job]));
    }
    booked = 0;
  }

  /**
   * A later moment at which all could be ready, laid forwards from the earliest start on; {@link
   * StaffedTime#NEVER} if the ink room does not open long enough again.
   */
  int readyAfter(MixerBook mixers, int t, int day) {
    int ready = 0;
    int placed = 0;
    while (placed < count && ready < StaffedTime.NEVER) {
      int of = ink[placed];
      int end = mixers.earliestEnd(notBefore(of, t, day), length(of));
      ready = end >= StaffedTime.NEVER ? end : Math.max(ready, end + inks[of].standS());
      if (end < StaffedTime.NEVER) {
        start[placed] = end - length(of);
        mixer[placed] = mixers.lane();
        mixers.book(mixers.lane(), start[placed], end);
        placed++;
      }
    }
    for (int job = 0; job < placed; job++) {
      mixers.free(mixer[job], start[job], start[job] + length(ink[job]));
    }
    return ready > t ? ready : firstMissing(mixers, t, day);
  }

  /** The gaps before {@code t} are there but too early for some: the next gap after them. */
  private int firstMissing(MixerBook mixers, int t, int day) {
    int ready = t + 1;
    for (int job = 0; job < count; job++) {
      int of = ink[job];
      int from = Math.max(notBefore(of, t, day), t - inks[of].standS() - length(of) + 1);
      int end = mixers.earliestEnd(from, length(of));
      ready = Math.max(ready, end >= StaffedTime.NEVER ? end : end + inks[of].standS());
    }
    return ready;
  }
}
