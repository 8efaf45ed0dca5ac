package org.potlife.simulation;

/**
 * Serves a run with ink: from live batches where their clock allows, else from new ones, activated
 * as late as the first use and the mixers allow (R10 to R13a). Cutting a need greedily at the end
 * of each pot life gives the fewest batches.
 */
final class InkDraw {

  /** The ink is there when the run needs it. */
  static final int SERVED = -1;

  /** A batch that the run needs later cannot be made in time. */
  static final int GAP = -2;

  private static final int SLOTS = ShopState.BATCHES_PER_INK;

  /** Less than this is not worth changing the bucket for, g. */
  private static final int SCRAP_G = 20;

  private final Problem problem;
  private final InkRoomSpec room;
  private final int[] saved;

  InkDraw(Problem problem) {
    this.problem = problem;
    room = problem.inkRoom();
    saved = new int[problem.inks().length * SLOTS * 5];
  }

  int dayOf(int t) {
    int[] days = problem.dayStart();
    int i = days.length - 1;
    while (days[i] > t) {
      i--;
    }
    return i;
  }

  /**
   * Whether all inks can be ready for a first stroke at {@code t}: {@link #SERVED}, or the earliest
   * moment at which they can.
   */
  int readyFor(ShopState state, RunSpec run, int t) {
    int day = dayOf(t);
    int length = newLength(state, run, t, day);
    if (length == 0) {
      return SERVED;
    }
    int stand = newStandS(state, run, t, day);
    int notBefore = notBefore(state, run, t, day);
    if (state.mixers.latest(notBefore, t - stand, length) >= 0) {
      return SERVED;
    }
    int end = state.mixers.earliestEnd(Math.max(notBefore, t - stand - length + 1), length);
    return end >= StaffedTime.NEVER ? StaffedTime.NEVER : end + stand;
  }

  private int newLength(ShopState state, RunSpec run, int t, int day) {
    int length = 0;
    for (RunSpec.InkNeed need : run.needs()) {
      if (live(state, need.ink(), need.chargeG(), t, day) < 0) {
        length += room.mixS();
        length += problem.inks()[need.ink()].activated() ? room.activateS() : 0;
      }
    }
    return length;
  }

  private int newStandS(ShopState state, RunSpec run, int t, int day) {
    int stand = 0;
    for (RunSpec.InkNeed need : run.needs()) {
      if (live(state, need.ink(), need.chargeG(), t, day) < 0) {
        stand = Math.max(stand, problem.inks()[need.ink()].standS());
      }
    }
    return stand;
  }

  /** Ink with agent is made on the day of its use (R11); ink without may be made before. */
  private int notBefore(ShopState state, RunSpec run, int t, int day) {
    for (RunSpec.InkNeed need : run.needs()) {
      if (problem.inks()[need.ink()].activated()
          && live(state, need.ink(), need.chargeG(), t, day) < 0) {
        return Math.max(0, problem.dayStart()[day]);
      }
    }
    return 0;
  }

  /** The live batch with the least time left that can serve at {@code t}; -1 if none. */
  private static int live(ShopState state, int ink, int chargeG, int t, int day) {
    int best = -1;
    for (int slot = ink * SLOTS; slot < (ink + 1) * SLOTS; slot++) {
      if (state.batchUseBy[slot] > t
          && state.batchReady[slot] <= t
          && state.batchDay[slot] == day
          && state.batchRoomG[slot] >= chargeG + SCRAP_G
          && (best < 0 || state.batchUseBy[slot] < state.batchUseBy[best])) {
        best = slot;
      }
    }
    return best;
  }

  /**
   * Books all ink of a run. Returns {@link #SERVED}, or {@link #GAP} with nothing booked.
   *
   * @param setUp whether the screens are charged
   */
  int serve(
      ShopState state, RunSpec run, int from, int to, boolean setUp, int runIndex, Trace trace) {
    save(state, run);
    state.mixers.mark();
    int batches = state.batches;
    long lost = state.costMilli[CostKind.INK_LOST.ordinal()];
    int day = dayOf(from);
    firstBatches(state, run, from, day, trace);
    for (RunSpec.InkNeed need : run.needs()) {
      if (!draw(state, need, from, to, setUp, runIndex, trace)) {
        restore(state, run);
        state.mixers.rollback();
        state.batches = batches;
        state.costMilli[CostKind.INK_LOST.ordinal()] = lost;
        if (trace != null) {
          trace.dropDraws(batches, runIndex);
        }
        return GAP;
      }
    }
    return SERVED;
  }

  private void firstBatches(ShopState state, RunSpec run, int from, int day, Trace trace) {
    int length = newLength(state, run, from, day);
    if (length == 0) {
      return;
    }
    int stand = newStandS(state, run, from, day);
    int start = state.mixers.latest(notBefore(state, run, from, day), from - stand, length);
    int mixer = state.mixers.lane();
    state.mixers.book(mixer, start, start + length);
    int mixAt = start;
    int activateAt = start;
    for (RunSpec.InkNeed need : run.needs()) {
      if (live(state, need.ink(), need.chargeG(), from, day) < 0) {
        activateAt += room.mixS();
      }
    }
    for (RunSpec.InkNeed need : run.needs()) {
      if (live(state, need.ink(), need.chargeG(), from, day) < 0) {
        boolean activated = problem.inks()[need.ink()].activated();
        int done = activated ? activateAt + room.activateS() : mixAt + room.mixS();
        open(state, need.ink(), mixAt, done, day, mixer, trace);
        mixAt += room.mixS();
        activateAt += activated ? room.activateS() : 0;
      }
    }
  }

  private void open(
      ShopState state, int ink, int mixFrom, int done, int day, int mixer, Trace trace) {
    InkSpec spec = problem.inks()[ink];
    int slot = ink * SLOTS;
    for (int i = slot + 1; i < (ink + 1) * SLOTS; i++) {
      if (state.batchUseBy[i] < state.batchUseBy[slot]) {
        slot = i;
      }
    }
    int ready = done + spec.standS();
    state.batchReady[slot] = ready;
    state.batchUseBy[slot] = spec.activated() ? done + spec.potLifeS() : StaffedTime.NEVER;
    state.batchRoomG[slot] = room.containerG() - room.reserveG();
    state.batchDay[slot] = day;
    state.batchId[slot] = state.batches;
    if (spec.activated()) {
      lose(state, spec, room.reserveG());
    }
    if (trace != null) {
      trace.batch(state.batches, ink, mixFrom, done, ready, state.batchUseBy[slot], mixer);
    }
    state.batches++;
  }

  private static void lose(ShopState state, InkSpec ink, int grams) {
    state.costMilli[CostKind.INK_LOST.ordinal()] += ink.costPerKgMilli() * grams * 3600 / 1000;
  }

  private boolean draw(
      ShopState state,
      RunSpec.InkNeed need,
      int from,
      int to,
      boolean setUp,
      int runIndex,
      Trace trace) {
    InkSpec ink = problem.inks()[need.ink()];
    int chargeG = setUp ? need.chargeG() : 0;
    int length = Math.max(1, to - from);
    int drawn = 0;
    int t = from;
    int slot = live(state, need.ink(), need.chargeG(), from, dayOf(from));
    while (true) {
      int capacity = drawn + state.batchRoomG[slot] - chargeG;
      int end = Math.min(to, state.batchUseBy[slot]);
      if ((long) need.printG() * (end - from) / length > capacity) {
        end = from + (int) ((long) capacity * length / need.printG());
      }
      int until = end >= to ? need.printG() : (int) ((long) need.printG() * (end - from) / length);
      int printG = until - drawn;
      state.batchRoomG[slot] -= printG + chargeG;
      if (ink.activated()) {
        lose(state, ink, chargeG);
      }
      if (trace != null) {
        trace.use(state.batchId[slot], runIndex, t, Math.max(end, t), printG, chargeG);
      }
      if (end >= to) {
        return true;
      }
      drawn = until;
      chargeG = 0;
      t = end;
      slot = follow(state, need.ink(), t, trace);
      if (slot < 0) {
        return false;
      }
    }
  }

  /** The batch that takes over in the middle of a run. */
  private int follow(ShopState state, int ink, int t, Trace trace) {
    int day = dayOf(t);
    int slot = live(state, ink, 0, t, day);
    if (slot >= 0) {
      return slot;
    }
    InkSpec spec = problem.inks()[ink];
    int length = room.mixS() + (spec.activated() ? room.activateS() : 0);
    int notBefore = spec.activated() ? Math.max(0, problem.dayStart()[day]) : 0;
    int start = state.mixers.latest(notBefore, t - spec.standS(), length);
    if (start < 0) {
      return -1;
    }
    state.mixers.book(state.mixers.lane(), start, start + length);
    open(state, ink, start, start + length, day, state.mixers.lane(), trace);
    return live(state, ink, 0, t, day);
  }

  private void save(ShopState state, RunSpec run) {
    int at = 0;
    for (RunSpec.InkNeed need : run.needs()) {
      int slot = need.ink() * SLOTS;
      for (int[] column : state.batchColumns) {
        System.arraycopy(column, slot, saved, at, SLOTS);
        at += SLOTS;
      }
    }
  }

  private void restore(ShopState state, RunSpec run) {
    int at = 0;
    for (RunSpec.InkNeed need : run.needs()) {
      int slot = need.ink() * SLOTS;
      for (int[] column : state.batchColumns) {
        System.arraycopy(saved, at, column, slot, SLOTS);
        at += SLOTS;
      }
    }
  }
}
