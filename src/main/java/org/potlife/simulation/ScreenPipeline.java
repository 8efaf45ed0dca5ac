package org.potlife.simulation;

import org.potlife.simulation.ScreenRoomSpec.DryStage;
import org.potlife.simulation.ScreenRoomSpec.HandStage;

/**
 * Makes a set of screens as early as frames, places, cabinets and the climate allow: degrease, dry,
 * coat, dry, expose, wash out, dry, post-expose, tape (R4 to R8). The screens of a set move
 * together.
 */
final class ScreenPipeline {

  /** More tries than this, and the room never exposes in time what it coats. */
  private static final int MOST_COATINGS = 100;

  /** Numbers of the stages at which a set can go on; degreasing is 0, coating 2, taping 8. */
  private static final int DRY_DEGREASED = 1;

  private static final int COATED = 2;
  private static final int EXPOSED = 4;
  private static final int WASH_OUT = 5;
  private static final int DRY_WASHED = 6;
  private static final int POST_EXPOSE = 7;

  private final Problem problem;
  private final ScreenRoomSpec room;
  private final int[] perMesh;
  private final CabinetKind[] kinds;
  private int lastLane;
  private int lastStartWork;
  private int lastCabinet;

  ScreenPipeline(Problem problem) {
    this.problem = problem;
    room = problem.screenRoom();
    perMesh = new int[room.frames().length];
    kinds = CabinetKind.of(room.cabinets());
  }

  /**
   * When a set is ready, seconds; one that is not there yet is made. {@link StaffedTime#NEVER} when
   * the frames do not suffice or the horizon ends before.
   */
  int readyAt(ScreenRoomState state, int set, Trace trace) {
    if (state.setReady[set] < 0) {
      state.setReady[set] = make(state, set, trace);
    }
    return state.setReady[set];
  }

  private int make(ScreenRoomState state, int set, Trace trace) {
    ScreenSetSpec spec = problem.sets()[set];
    int screens = spec.toMake();
    if (screens == 0) {
      return 0;
    }
    if (spec.fromStage() > 0) {
      return goOn(state, set, spec, trace);
    }
    int start = takeFrames(state, spec);
    if (start >= StaffedTime.NEVER) {
      return StaffedTime.NEVER;
    }
    int t = hands(state, HandStage.DEGREASE, screens, start, set, trace);
    t = dry(state, DryStage.DEGREASED, screens, t, set, trace);
    t = coatAndExpose(state, screens, t, set, trace);
    return Math.max(spec.notBefore(), finish(state, screens, t, EXPOSED, set, trace));
  }

  /** What was begun before the plan goes on with its next stage. */
  private int goOn(ScreenRoomState state, int set, ScreenSetSpec spec, Trace trace) {
    int screens = spec.toMake();
    int from = spec.fromStage();
    int dried = spec.notBefore();
    int t = Math.max(0, dried);
    if (from <= DRY_DEGREASED) {
      t = dry(state, DryStage.DEGREASED, screens, t, set, trace);
    }
    if (from <= COATED) {
      t = coatAndExpose(state, screens, t, set, trace);
    } else if (from <= EXPOSED) {
      dried = from < EXPOSED ? dry(state, DryStage.COATED, screens, t, set, trace) : dried;
      t = hands(state, HandStage.EXPOSE, screens, Math.max(0, dried), set, trace);
      if (t < StaffedTime.NEVER && lastExposure(screens, t) - dried > room.shelfLifeS()) {
        return StaffedTime.NEVER;
      }
    }
    return finish(state, screens, t, Math.max(from, EXPOSED + 1), set, trace);
  }

  private int finish(
      ScreenRoomState state, int screens, int exposed, int from, int set, Trace trace) {
    int t = exposed;
    if (from <= WASH_OUT) {
      t = hands(state, HandStage.WASH_OUT, screens, t, set, trace);
    }
    if (from <= DRY_WASHED) {
      t = dry(state, DryStage.WASHED, screens, t, set, trace);
    }
    if (from <= POST_EXPOSE) {
      t = hands(state, HandStage.POST_EXPOSE, screens, t, set, trace);
    }
    return hands(state, HandStage.TAPE, screens, t, set, trace);
  }

  /**
   * Coats, dries and exposes. Where a night or a queue would keep the coated screens longer than
   * their shelf life (R7), they are coated so much later.
   */
  private int coatAndExpose(ScreenRoomState state, int screens, int arrived, int set, Trace trace) {
    int notBefore = arrived;
    for (int tries = 0; tries < MOST_COATINGS; tries++) {
      int coated = hands(state, HandStage.COAT, screens, notBefore, set, trace);
      int bench = lastLane;
      int coatWork = lastStartWork;
      int dryAt = dry(state, DryStage.COATED, screens, coated, set, trace);
      int exposed = hands(state, HandStage.EXPOSE, screens, dryAt, set, trace);
      if (exposed >= StaffedTime.NEVER) {
        return StaffedTime.NEVER;
      }
      int tooLong =
          exposed - dryAt <= room.shelfLifeS()
              ? 0
              : lastExposure(screens, dryAt) - dryAt - room.shelfLifeS();
      if (tooLong <= 0) {
        return exposed;
      }
      place(state, HandStage.EXPOSE)
          .undo(lastLane, lastStartWork, each(HandStage.EXPOSE) * screens);
      state.cabinets[lastCabinet].unload(screens);
      place(state, HandStage.COAT).undo(bench, coatWork, each(HandStage.COAT) * screens);
      if (trace != null) {
        trace.dropSteps(set, 3);
      }
      notBefore = Math.max(notBefore, coated - each(HandStage.COAT) * screens) + tooLong;
    }
    return StaffedTime.NEVER;
  }

  /** When the exposure of the last screen begins. */
  private int lastExposure(int screens, int dryAt) {
    int each = each(HandStage.EXPOSE);
    return each == 0 ? dryAt : room.staffed().startOf(lastStartWork + each * (screens - 1));
  }

  private PlaceBook place(ScreenRoomState state, HandStage stage) {
    return state.places[stage.place().ordinal()];
  }

  private int each(HandStage stage) {
    return room.stageS()[stage.ordinal()];
  }

  private int takeFrames(ScreenRoomState state, ScreenSetSpec spec) {
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
  void giveBack(ScreenRoomState state, int set, int releasedAt) {
    if (state.isIdle()) {
      return;
    }
    ScreenSetSpec spec = problem.sets()[set];
    int reclaimed = releasedAt + room.reclaimS() * spec.screens();
    for (int mesh : spec.meshes()) {
      state.frames[mesh].giveBack(reclaimed);
    }
    for (int mesh : spec.heldMeshes()) {
      state.frames[mesh].giveBack(reclaimed);
    }
  }

  private int hands(
      ScreenRoomState state, HandStage stage, int screens, int notBefore, int set, Trace trace) {
    if (notBefore >= StaffedTime.NEVER) {
      return StaffedTime.NEVER;
    }
    PlaceBook place = place(state, stage);
    int each = each(stage);
    int end = place.work(notBefore, each * screens);
    lastLane = place.lane();
    lastStartWork = place.startWork();
    if (trace != null && end < StaffedTime.NEVER) {
      trace.hands(set, stage, place.lane(), place.startWork(), each, notBefore);
    }
    return end;
  }

  private int dry(
      ScreenRoomState state, DryStage stage, int screens, int notBefore, int set, Trace trace) {
    if (notBefore >= StaffedTime.NEVER) {
      return StaffedTime.NEVER;
    }
    int best = StaffedTime.NEVER;
    int chosen = -1;
    for (CabinetKind kind : kinds) {
      kind.begin();
    }
    for (int i = 0; i < state.cabinets.length; i++) {
      ScreenRoomSpec.Cabinet cabinet = room.cabinets()[i];
      if (screens <= cabinet.frames()) {
        int dryAt =
            state.cabinets[i].search(cabinet, kinds[i], stage.ordinal(), screens, notBefore, best);
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
    lastCabinet = chosen;
    return best;
  }
}
