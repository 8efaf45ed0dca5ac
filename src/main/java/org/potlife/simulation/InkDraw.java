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

  private static final int SHORTEST_DAY_S = 23 * 3600;

  private final Problem problem;
  private final InkRoomSpec room;
  private final int[] saved;
  private final int[] slots;
  private int day;
  private int newLength;
  private int newMixes;
  private int newStandS;
  private int newNotBefore;
  private int newStart;
  private int newMixer;

  InkDraw(Problem problem) {
    this.problem = problem;
    room = problem.inkRoom();
    saved = new int[problem.inks().length * SLOTS * 5];
    slots = new int[problem.inks().length];
  }

  /** Local day of a moment, by its place among the days of the problem. */
  int dayOf(int t) {
    int[] days = problem.dayStart();
    int i = Math.max(0, Math.min(days.length - 1, t / SHORTEST_DAY_S + 1));
    while (i > 0 && days[i] > t) {
      i--;
    }
    return i;
  }

  /**
   * Whether all inks can be ready for a first stroke at {@code t}: {@link #SERVED}, or the earliest
   * moment at which they can. {@link #serve} for the same moment builds on this look.
   */
  int readyFor(ShopState state, RunSpec run, int t) {
    look(state, run, t);
    if (newLength == 0) {
      return SERVED;
    }
    newStart = state.mixers.latest(newNotBefore, t - newStandS, newLength);
    newMixer = state.mixers.lane();
    if (newStart >= 0) {
      return SERVED;
    }
    int from = Math.max(newNotBefore, t - newStandS - newLength + 1);
    int end = state.mixers.earliestEnd(from, newLength);
    return end >= StaffedTime.NEVER ? StaffedTime.NEVER : end + newStandS;
  }

  /** Which inks need a new batch for a first stroke at {@code t}, and what that takes. */
  private void look(ShopState state, RunSpec run, int t) {
    day = dayOf(t);
    newLength = 0;
    newMixes = 0;
    newStandS = 0;
    newNotBefore = 0;
    for (int i = 0; i < run.needs().length; i++) {
      RunSpec.InkNeed need = run.needs()[i];
      slots[i] = live(state, need.ink(), need.chargeG(), t, day);
      if (slots[i] < 0) {
        InkSpec ink = problem.inks()[need.ink()];
        newMixes++;
        newLength += room.mixS();
        newStandS = Math.max(newStandS, ink.standS());
        if (ink.activated()) {
          newLength += room.activateS();
          // ink with agent is made on the day of its use (R11), ink without may be made before
          newNotBefore = Math.max(0, problem.dayStart()[day]);
        }
      }
    }
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
    firstBatches(state, run, trace);
    for (int i = 0; i < run.needs().length; i++) {
      if (!draw(state, run.needs()[i], slots[i], from, to, setUp, runIndex, trace)) {
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

  private void firstBatches(ShopState state, RunSpec run, Trace trace) {
    if (newLength == 0) {
      return;
    }
    state.mixers.book(newMixer, newStart, newStart + newLength);
    int mixAt = newStart;
    int activateAt = newStart + newMixes * room.mixS();
    for (int i = 0; i < run.needs().length; i++) {
      if (slots[i] < 0) {
        int ink = run.needs()[i].ink();
        boolean activated = problem.inks()[ink].activated();
        int done = activated ? activateAt + room.activateS() : mixAt + room.mixS();
        slots[i] = open(state, ink, mixAt, done, day, newMixer, trace);
        mixAt += room.mixS();
        activateAt += activated ? room.activateS() : 0;
      }
    }
  }

  private int open(
      ShopState state, int ink, int mixFrom, int done, int ofDay, int mixer, Trace trace) {
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
    state.batchDay[slot] = ofDay;
    state.batchId[slot] = state.batches;
    if (spec.activated()) {
      lose(state, spec, room.reserveG());
    }
    if (trace != null) {
      trace.batch(state.batches, ink, mixFrom, done, ready, state.batchUseBy[slot], mixer);
    }
    state.batches++;
    return slot;
  }

  private static void lose(ShopState state, InkSpec ink, int grams) {
    state.costMilli[CostKind.INK_LOST.ordinal()] += ink.costPerKgMilli() * grams * 3600 / 1000;
  }

  private boolean draw(
      ShopState state,
      RunSpec.InkNeed need,
      int firstSlot,
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
    int slot = firstSlot;
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
    int today = dayOf(t);
    int slot = live(state, ink, 0, t, today);
    if (slot >= 0) {
      return slot;
    }
    InkSpec spec = problem.inks()[ink];
    int length = room.mixS() + (spec.activated() ? room.activateS() : 0);
    int notBefore = spec.activated() ? Math.max(0, problem.dayStart()[today]) : 0;
    int start = state.mixers.latest(notBefore, t - spec.standS(), length);
    if (start < 0) {
      return -1;
    }
    state.mixers.book(state.mixers.lane(), start, start + length);
    return open(state, ink, start, start + length, today, state.mixers.lane(), trace);
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
