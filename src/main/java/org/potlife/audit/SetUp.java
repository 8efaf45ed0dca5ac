package org.potlife.audit;

import java.util.List;
import java.util.Objects;
import org.potlife.ink.Ink;
import org.potlife.shop.Press;
import org.potlife.shop.Shop;

/**
 * The set-up that one run needs after another, stated anew.
 *
 * @param mounted stations whose screen is not there yet
 * @param removed stations whose old screen does not stay
 * @param minutes staffed minutes in all, the first piece included; 0 without a set-up
 */
record SetUp(int mounted, int removed, int minutes) {

  /** What it takes to go from the screens {@code before} to those {@code after}, by station. */
  static SetUp between(List<ScreenKey> before, List<ScreenKey> after, Press press, Shop shop) {
    int mounted = 0;
    int removed = 0;
    int washUp = 0;
    for (int station = 0; station < Math.max(before.size(), after.size()); station++) {
      ScreenKey old = station < before.size() ? before.get(station) : null;
      ScreenKey next = station < after.size() ? after.get(station) : null;
      if (next != null && !next.equals(old)) {
        mounted++;
      }
      if (old != null && !old.equals(next)) {
        removed++;
      }
      if (old != null && next != null && !Objects.equals(old.ink(), next.ink())) {
        washUp +=
            lightness(next, shop) < lightness(old, shop)
                ? press.washUpToDarkerMinutes()
                : press.washUpToLighterMinutes();
      }
    }
    if (mounted == 0 && removed == 0) {
      return new SetUp(0, 0, 0);
    }
    return new SetUp(
        mounted,
        removed,
        press.changeoverMinutes()
            + press.tearDownMinutesPerScreen() * removed
            + press.minutesPerScreen() * mounted
            + washUp
            + press.firstPieceMinutes());
  }

  private static double lightness(ScreenKey screen, Shop shop) {
    return shop.findInk(screen.ink()).map(Ink::lightness).orElse(0.0);
  }

  boolean needed() {
    return mounted > 0 || removed > 0;
  }
}
