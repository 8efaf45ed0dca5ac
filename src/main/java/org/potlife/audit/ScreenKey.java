package org.potlife.audit;

import java.util.List;
import java.util.Locale;
import org.potlife.order.Colour;
import org.potlife.order.Print;
import org.potlife.screen.KeptStencil;
import org.potlife.sheet.PlanSheet.ScreenLine;

/**
 * By what a screen is known: two screens with the same key are the same picture.
 *
 * @param meshPerCm threads per cm
 * @param threadUm thread diameter, um
 */
record ScreenKey(String design, String ink, double meshPerCm, double threadUm) {

  /** The screens that a print needs, by station. */
  static List<ScreenKey> of(Print print) {
    return print.colours().stream().map(colour -> of(print, colour)).toList();
  }

  static ScreenKey of(Print print, Colour colour) {
    return new ScreenKey(print.design(), colour.ink(), colour.meshPerCm(), colour.threadUm());
  }

  static ScreenKey of(ScreenLine line) {
    return new ScreenKey(line.design(), line.ink(), line.meshPerCm(), line.threadUm());
  }

  static ScreenKey of(KeptStencil kept) {
    return new ScreenKey(kept.design(), kept.ink(), kept.meshPerCm(), kept.threadUm());
  }

  boolean sameFrame(double mesh, double thread) {
    return meshPerCm == mesh && threadUm == thread;
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%s in %s on %.0f-%.0f", design, ink, meshPerCm, threadUm);
  }
}
