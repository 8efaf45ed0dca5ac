package org.potlife.simulation;

/**
 * What the simulation knows of the screen room.
 *
 * @param staffed staffed time
 * @param places number of places by {@link Place}
 * @param stageS hands-on seconds per screen by {@link HandStage}
 * @param shelfLifeS how long a dry coated screen keeps until it is exposed, s
 * @param reclaimS seconds per screen until a released frame can be used again
 * @param cabinets drying cabinets
 * @param frames frames owned, by mesh
 */
public record ScreenRoomSpec(
    StaffedTime staffed,
    int[] places,
    int[] stageS,
    int shelfLifeS,
    int reclaimS,
    Cabinet[] cabinets,
    int[] frames) {

  /** Seconds of the shortest work at a kind of place; 0 if some stage there takes no time. */
  int shortestWorkS(Place place) {
    int shortest = Integer.MAX_VALUE;
    for (HandStage stage : HandStage.values()) {
      if (stage.place() == place) {
        shortest = Math.min(shortest, stageS[stage.ordinal()]);
      }
    }
    return shortest;
  }

  /** A kind of place that takes one screen at a time. */
  public enum Place {
    SINK,
    BENCH,
    EXPOSURE,
    BOOTH,
    TABLE
  }

  /** A stage done by hand, and where. */
  public enum HandStage {
    DEGREASE(Place.SINK),
    COAT(Place.BENCH),
    EXPOSE(Place.EXPOSURE),
    WASH_OUT(Place.BOOTH),
    POST_EXPOSE(Place.EXPOSURE),
    TAPE(Place.TABLE);

    private final Place place;

    HandStage(Place place) {
      this.place = place;
    }

    /** Where it is done. */
    public Place place() {
      return place;
    }
  }

  /** A stage of drying in a cabinet; each is a state of wetness of its own (R6). */
  public enum DryStage {
    DEGREASED,
    COATED,
    WASHED
  }

  /**
   * A drying cabinet.
   *
   * @param frames screens per load
   * @param gatherS how long a load is collected, s
   * @param drying its climate over the horizon
   * @param requiredPaS drying required by {@link DryStage}, reserve included, Pa s
   */
  public record Cabinet(int frames, int gatherS, Drying drying, double[] requiredPaS) {}
}
