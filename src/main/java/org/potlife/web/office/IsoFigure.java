package org.potlife.web.office;

import io.quarkus.qute.TemplateEnum;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.Function;
import org.potlife.closeout.PressFigures;

/** The figures of ISO 22400-2 that a close-out has, in the order in which they build on another. */
@TemplateEnum
public enum IsoFigure {
  ALLOCATION(PressFigures::allocation),
  UTILISATION(PressFigures::utilisation),
  AVAILABILITY(PressFigures::availability),
  SET_UP_RATE(PressFigures::setUpRate),
  EFFECTIVENESS(PressFigures::effectiveness),
  QUALITY(PressFigures::qualityRatio),
  SCRAP(PressFigures::scrapRatio),
  OEE(PressFigures::oeeIndex),
  THROUGHPUT(PressFigures::throughputPerHour);

  private final Function<PressFigures, Double> of;

  IsoFigure(Function<PressFigures, Double> of) {
    this.of = of;
  }

  /** The value with its unit; a dash for a ratio over nothing. */
  public String shown(PressFigures press) {
    Double value = of.apply(press);
    if (value == null) {
      return "\u2013";
    }
    return this == THROUGHPUT ? tenth(value) + " /h" : percent(value);
  }

  /** A share in per cent, to the tenth. */
  static String percent(double share) {
    return tenth(share * 100) + " %";
  }

  private static String tenth(double value) {
    return BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP).toPlainString();
  }
}
