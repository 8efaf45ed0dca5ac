package org.potlife.planning;

import java.util.List;
import java.util.Optional;
import org.potlife.sheet.PlanSheet.StepLine;
import org.potlife.shop.Shop;
import org.potlife.simulation.ScreenRoomSpec.DryStage;
import org.potlife.simulation.ScreenRoomSpec.HandStage;
import org.potlife.simulation.ScreenRoomSpec.Place;

/** Names of the stages and places of the screen room on the sheet, both ways. */
final class ScreenSteps {

  /** Stages in their order. */
  static final List<String> STAGES =
      List.of(
          "degrease",
          "dry-degreased",
          "coat",
          "dry-coated",
          "expose",
          "wash-out",
          "dry-washed",
          "post-expose",
          "tape");

  private static final List<String> PLACES = List.of("sink", "bench", "exposure", "booth", "table");

  /** A place on the sheet. */
  record PlaceAt(int kind, int lane) {}

  private ScreenSteps() {}

  static String name(HandStage stage) {
    return switch (stage) {
      case DEGREASE -> "degrease";
      case COAT -> "coat";
      case EXPOSE -> "expose";
      case WASH_OUT -> "wash-out";
      case POST_EXPOSE -> "post-expose";
      case TAPE -> "tape";
    };
  }

  static String name(DryStage stage) {
    return switch (stage) {
      case DEGREASED -> "dry-degreased";
      case COATED -> "dry-coated";
      case WASHED -> "dry-washed";
    };
  }

  static String place(Place place, int lane) {
    return PLACES.get(place.ordinal()) + "-" + (lane + 1);
  }

  /** The place of a hands-on step; empty for drying. */
  static Optional<PlaceAt> place(StepLine step, Shop shop) {
    if (step.drying()) {
      return Optional.empty();
    }
    int dash = step.where().lastIndexOf('-');
    int kind = PLACES.indexOf(step.where().substring(0, dash));
    int lane = Integer.parseInt(step.where().substring(dash + 1)) - 1;
    return lane < places(kind, shop) ? Optional.of(new PlaceAt(kind, lane)) : Optional.empty();
  }

  private static int places(int kind, Shop shop) {
    var room = shop.screenRoom();
    return switch (Place.values()[kind]) {
      case SINK -> room.degreasingSinks();
      case BENCH -> room.coatingBenches();
      case EXPOSURE -> room.exposureUnits();
      case BOOTH -> room.washOutBooths();
      case TABLE -> room.tapingTables();
    };
  }

  /** Index of the cabinet of a drying step; -1 for hands-on steps or a cabinet that is gone. */
  static int cabinet(StepLine step, Shop shop) {
    var cabinets = shop.screenRoom().cabinets();
    for (int i = 0; i < cabinets.size(); i++) {
      if (step.drying() && cabinets.get(i).id().equals(step.where())) {
        return i;
      }
    }
    return -1;
  }

  static int dryStage(StepLine step) {
    for (DryStage stage : DryStage.values()) {
      if (name(stage).equals(step.step())) {
        return stage.ordinal();
      }
    }
    throw new IllegalArgumentException("not a drying step: " + step.step());
  }
}
