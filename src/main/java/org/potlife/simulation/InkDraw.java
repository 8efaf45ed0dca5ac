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

  /** A day of clock change in spring; so no day is missed when its place is guessed. */
  private static final int SHORTEST_DAY_S = 22 * 3600;

  private static final int SLOTS = ShopState.BATCHES_PER_INK;

  private final Problem problem;
  private final InkRoomSpec room;
  private final int[] saved;
  private final Mixing mixing;

  InkDraw(Problem problem) {
    this.problem = problem;
    room = problem.inkRoom();
    mixing = new Mixing(problem);
    saved = new int[problem.inks().length * SLOTS * 5];
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
   * moment at which they can.
   */
  int readyFor(ShopState state, RunSpec run, int t) {
    int day = dayOf(t);
    findMissing(state, run, t, day);
    if (mixing.count() == 0) {
      return SERVED;
    }
    if (mixing.book(state.mixers, t, day)) {
      mixing.undo(state.mixers);
      return SERVED;
    }
    return mixing.readyAfter(state.mixers, t, day);
  }

  private void findMissing(ShopState state, RunSpec run, int t, int day) {
    mixing.clear();
    for (RunSpec.InkNeed need : run.needs()) {
      if (live(state, need.ink(), need.chargeG(), t, day) < 0) {
        mixing.add(need.ink());
      }
    }
  }

  /** The live batch with the least time left that can serve at {@code t}; -1 if none. */
  private static int live(ShopState state, int ink, int chargeG, int t, int day) {
    for (int slot = ink * SLOTS; slot < (ink + 1) * SLOTS; slot++) {
      if (state.batchUseBy[slot] > t
          && state.batchReady[slot] <= t
          && (state.batchDay[slot] == day || state.batchDay[slot] == ShopState.ANY_DAY)
          && state.batchRoomG[slot] >= chargeG + InkRoomSpec.LEAST_DRAW_G) {
        return slot;
      }
    }
    return -1;
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
    findMissing(state, run, from, day);
    mixing.book(state.mixers, from, day);
    for (int job = 0; job < mixing.count(); job++) {
      open(
          state,
          mixing.ink(job),
          mixing.start(job),
          mixing.done(job),
          day,
          mixing.mixer(job),
          trace);
    }
  }

  private void open(
      ShopState state, int ink, int mixFrom, int done, int day, int mixer, Trace trace) {
    InkSpec spec = problem.inks()[ink];
    int useBy = spec.activated() ? done + spec.potLifeS() : StaffedTime.NEVER;
    int slot = state.slotFor(ink, useBy);
    int ready = done + spec.standS();
    state.batchReady[slot] = ready;
    state.batchUseBy[slot] = useBy;
    state.batchRoomG[slot] = room.containerG() - room.reserveG();
    state.batchDay[slot] = day;
    state.batchId[slot] = state.batches;
    if (spec.activated()) {
      lose(state, spec, room.reserveG());
    }
    if (trace != null) {
      trace.batch(state.batches, ink, mixFrom, done, ready, useBy, mixer);
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
    int seconds = Math.max(1, to - from);
    int drawn = 0;
    int t = from;
    int slot = live(state, need.ink(), need.chargeG(), from, dayOf(from));
    while (true) {
      int capacity = drawn + state.batchRoomG[slot] - chargeG;
      int end = Math.min(to, state.batchUseBy[slot]);
      if ((long) need.printG() * (end - from) / seconds > capacity) {
        end = from + (int) ((long) capacity * seconds / need.printG());
      }
      int until = end >= to ? need.printG() : (int) ((long) need.printG() * (end - from) / seconds);
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
      if (end <= t) {
        // what is left does not last a second
        state.batchRoomG[slot] = 0;
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
    int work = mixing.length(ink);
    int stand = problem.inks()[ink].standS();
    int start = state.mixers.latest(mixing.notBefore(ink, t, day), t - stand, work);
    if (start < 0) {
      return -1;
    }
    state.mixers.book(state.mixers.lane(), start, start + work);
    open(state, ink, start, start + work, day, state.mixers.lane(), trace);
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
