package org.potlife.planning;

import java.util.List;

/**
 * The screens that a print needs, by station.
 *
 * @param ids names of the screens on the sheet, by station
 * @param kept by station, whether it is a kept stencil
 * @param held by station, whether it is in process since the published plan, or ready, while others
 *     of the set are made anew
 */
record ScreenSet(
    int index, List<ScreenKey> keys, List<String> ids, List<Boolean> kept, List<Boolean> held) {

  /** Whether the screen of this station is made for the set from the start. */
  boolean isMade(int station) {
    return !kept.get(station) && !held.get(station);
  }
}
