package org.potlife.simulation;

import java.util.Arrays;

/**
 * Cabinets that dry alike. Who goes in later is not dry earlier, so that for the second cabinet of
 * a kind it mostly needs no reckoning any more.
 */
final class CabinetKind {

  private final ScreenRoomSpec.Cabinet like;
  private int at;
  private int dryAt;

  private CabinetKind(ScreenRoomSpec.Cabinet like) {
    this.like = like;
  }

  /** By cabinet, its kind. */
  static CabinetKind[] of(ScreenRoomSpec.Cabinet[] cabinets) {
    CabinetKind[] kinds = new CabinetKind[cabinets.length];
    for (int i = 0; i < kinds.length; i++) {
      for (int j = 0; j < i && kinds[i] == null; j++) {
        kinds[i] = kinds[j].isLike(cabinets[i]) ? kinds[j] : null;
      }
      kinds[i] = kinds[i] == null ? new CabinetKind(cabinets[i]) : kinds[i];
    }
    return kinds;
  }

  private boolean isLike(ScreenRoomSpec.Cabinet other) {
    return like.gatherS() == other.gatherS()
        && like.drying().equals(other.drying())
        && Arrays.equals(like.requiredPaS(), other.requiredPaS());
  }

  /** Other screens, or another stage: what was reckoned does not hold any more. */
  void begin() {
    at = StaffedTime.NEVER;
  }

  /**
   * When a load is dry whose first screens go in at {@code entry}. A time that is not before {@code
   * bound} may be too early.
   */
  int dryAt(int entry, int dryStage, int bound) {
    if (entry >= StaffedTime.NEVER) {
      return StaffedTime.NEVER;
    }
    if (entry >= at && dryAt >= bound) {
      return dryAt;
    }
    int dry = like.drying().dryAt(entry + like.gatherS(), like.requiredPaS()[dryStage]);
    if (entry < at) {
      at = entry;
      dryAt = dry;
    }
    return dry;
  }
}
