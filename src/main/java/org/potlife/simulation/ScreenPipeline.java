package org.potlife.simulation;

import org.potlife.simulation.ScreenRoomSpec.DryStage;
import org.potlife.simulation.ScreenRoomSpec.HandStage;

/**
 * Makes a set of screens as early as frames, places, cabinets and the climate allow: degrease, dry,
 * coat, dry, expose, wash out, dry, post-expose, tape (R4 to R8). The screens of a set move
 * together.
 */
final class ScreenPipeline {

  private final Problem problem;
  private final ScreenRoomSpec room;
  private final int[] perMesh;

  ScreenPipeline(Problem problem) {
    this.problem = problem;
    room = problem.screenRoom();
    perMesh = new int[room.frames().length];
  }

  /**
   * Books the making of a set and tells when it is ready, seconds; {@link StaffedTime#NEVER} when
   * the frames do not suffice or the horizon ends before.
   */
  int make(ShopState state, int set, Trace trace) {
    ScreenSetSpec spec = problem.sets()[set];
    int screens = spec.toMake();
    if (screens == 0) {
      return 0;
    }
    int start = takeFrames(state, spec);
    if (start >= StaffedTime.NEVER) {
      return StaffedTime.NEVER;
    }
    int t = hands(state, HandStage.DEGREASE, screens, start, set, trace);
    t = dry(state, DryStage.DEGREASED, screens, t, set, trace);
    t = hands(state, HandStage.COAT, screens, t, set, trace);
    t = dry(state, DryStage.COATED, screens, t, set, trace);
    t = hands(state, HandStage.EXPOSE, screens, t, set, trace);
    t = hands(state, HandStage.WASH_OUT, screens, t, set, trace);
    t = dry(state, DryStage.WASHED, screens, t, set, trace);
    t = hands(state, HandStage.POST_EXPOSE, screens, t, set, trace);
    return hands(state, HandStage.TAPE, screens, t, set, trace);
  }

  private int takeFrames(ShopState state, ScreenSetSpec spec) {
    int start = 0;
    for (int mesh : spec.meshes()) {
      perMesh[mesh]++;
    }
    for (int mesh : spec.meshes()) {
      start = Math.max(start, state.frames[mesh].availableAt(perMesh[mesh]));
    }
    boolean enough = start < StaffedTime.NEVER;
    for (int mesh : spec.meshes()) {
      if (enough && perMesh[mesh] > 0) {
        state.frames[mesh].take(perMesh[mesh]);
      }
      perMesh[mesh] = 0;
    }
    return start;
  }

  /** Gives the frames of a set back, which are released at {@code releasedAt}. */
  void giveBack(ShopState state, int set, int releasedAt) {
    ScreenSetSpec spec = problem.sets()[set];
    int reclaimed = releasedAt + room.reclaimS() * spec.screens();
    for (int mesh : spec.meshes()) {
      state.frames[mesh].giveBack(reclaimed);
    }
  }

  private int hands(
      ShopState state, HandStage stage, int screens, int notBefore, int set, Trace trace) {
    if (notBefore >= StaffedTime.NEVER) {
      return StaffedTime.NEVER;
    }
    PlaceBook place = state.places[stage.place().ordinal()];
    int each = room.stageS()[stage.ordinal()];
    int end = place.work(notBefore, each * screens);
    if (trace != null && end < StaffedTime.NEVER) {
      trace.hands(set, stage, place.lane(), place.startWork(), each, notBefore);
    }
    return end;
  }

  private int dry(
      ShopState state, DryStage stage, int screens, int notBefore, int set, Trace trace) {
    if (notBefore >= StaffedTime.NEVER) {
      return StaffedTime.NEVER;
    }
    int best = StaffedTime.NEVER;
    int chosen = -1;
    for (int i = 0; i < state.cabinets.length; i++) {
      ScreenRoomSpec.Cabinet cabinet = room.cabinets()[i];
      if (screens <= cabinet.frames()) {
        int dryAt = state.cabinets[i].search(cabinet, stage.ordinal(), screens, notBefore);
        if (dryAt < best) {
          best = dryAt;
          chosen = i;
        }
      }
    }
    if (chosen < 0) {
      return StaffedTime.NEVER;
    }
    CabinetBook cabinet = state.cabinets[chosen];
    if (trace != null) {
      trace.drying(set, stage, chosen, cabinet.entry(), best);
    }
    cabinet.load(room.cabinets()[chosen], stage.ordinal(), screens, best);
    return best;
  }
}
