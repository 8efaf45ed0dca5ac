package org.potlife.planning;

import java.util.List;
import org.potlife.order.Colour;
import org.potlife.order.Print;

/**
 * What makes two screens the same.
 *
 * @param meshPerCm threads per cm
 * @param threadUm thread diameter, um
 */
record ScreenKey(String design, String ink, double meshPerCm, double threadUm) {

  static ScreenKey of(Print print, Colour colour) {
    return new ScreenKey(print.design(), colour.ink(), colour.meshPerCm(), colour.threadUm());
  }

  static List<ScreenKey> of(Print print) {
    return print.colours().stream().map(colour -> of(print, colour)).toList();
  }
}
