package org.potlife.planning;

import java.util.List;

/**
 * The screens that a print needs, by station.
 *
 * @param ids names of the screens on the sheet, by station
 * @param kept by station, whether it is a kept stencil
 */
record ScreenSet(int index, List<ScreenKey> keys, List<String> ids, List<Boolean> kept) {}
