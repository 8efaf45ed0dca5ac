package org.potlife.audit;

import java.util.Optional;
import java.util.stream.Stream;
import org.potlife.screen.ScreenRoom;

/** The stages of a screen in the order of the work. */
enum Stage {
  DEGREASE("degrease", "sink"),
  DRY_DEGREASED("dry-degreased", null),
  COAT("coat", "bench"),
  DRY_COATED("dry-coated", null),
  EXPOSE("expose", "exposure"),
  WASH_OUT("wash-out", "booth"),
  DRY_WASHED("dry-washed", null),
  POST_EXPOSE("post-expose", "exposure"),
  TAPE("tape", "table");

  private final String word;
  private final String place;

  Stage(String word, String place) {
    this.word = word;
    this.place = place;
  }

  static Optional<Stage> find(String word) {
    return Stream.of(values()).filter(stage -> stage.word.equals(word)).findFirst();
  }

  @Override
  public String toString() {
    return word;
  }

  /** Whether it happens in a cabinet, day and night. */
  boolean drying() {
    return place == null;
  }

  /** Whether {@code where} is one of the room's places for this hands-on stage. */
  boolean isAt(String where, ScreenRoom room) {
    for (int i = 1; i <= places(room); i++) {
      if ((place + "-" + i).equals(where)) {
        return true;
      }
    }
    return false;
  }

  private int places(ScreenRoom room) {
    return switch (this) {
      case DEGREASE -> room.degreasingSinks();
      case COAT -> room.coatingBenches();
      case EXPOSE, POST_EXPOSE -> room.exposureUnits();
      case WASH_OUT -> room.washOutBooths();
      case TAPE -> room.tapingTables();
      default -> 0;
    };
  }

  /** Hands-on minutes per screen; 0 for drying. */
  double minutes(ScreenRoom room) {
    return switch (this) {
      case DEGREASE -> room.stages().degrease();
      case COAT -> room.stages().coat();
      case EXPOSE -> room.stages().expose();
      case WASH_OUT -> room.stages().washOut();
      case POST_EXPOSE -> room.stages().postExpose();
      case TAPE -> room.stages().tape();
      default -> 0;
    };
  }

  /** Drying that the stage needs, vapour pressure deficit times hours, Pa h; 0 for hands-on. */
  double dryingPaH(ScreenRoom room) {
    return switch (this) {
      case DRY_COATED -> room.emulsion().dryingPaH();
      case DRY_DEGREASED, DRY_WASHED -> room.emulsion().rinseDryingPaH();
      default -> 0;
    };
  }
}
