package org.potlife.plan.list;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.potlife.dryer.Dryer;
import org.potlife.dryer.Evaporation;
import org.potlife.sheet.PlanSheet.BeltLine;

/**
 * Water that a dryer takes out at a moment, and the heat for it by part (R16): each part is warmed
 * from the room to 100 degrees Celsius and evaporated there; what the dryer loses on the way is the
 * rest of what it gives. To the hundredth.
 *
 * @param kgPerH water in all, kg/h
 * @param depositKgPerH of it water of the wet prints
 * @param clothKgPerH of it water of the cloth, its regain
 * @param kw heat that the dryer gives, losses included, kW
 * @param depositKw of it for the water of the prints
 * @param clothKw of it for the water of the cloth
 * @param lossKw of it lost, by the dryer's efficiency
 */
public record BeltWater(
    double kgPerH,
    double depositKgPerH,
    double clothKgPerH,
    double kw,
    double depositKw,
    double clothKw,
    double lossKw) {

  private static final double G_PER_KG = 1000;

  static BeltWater of(Dryer dryer, BeltLine line, BeltRuns runs) {
    double depositG = 0;
    double clothG = 0;
    for (BeltRun run : runs.of(line)) {
      double rate = runs.ratePerHour(run.run(), line.from());
      depositG += rate * run.depositWaterG();
      clothG += rate * run.clothWaterG();
    }
    double depositKw = goodsKw(depositG, dryer);
    double clothKw = goodsKw(clothG, dryer);
    double goodsKw = depositKw + clothKw;
    double kw = goodsKw / dryer.efficiency();
    return new BeltWater(
        hundredth((depositG + clothG) / G_PER_KG),
        hundredth(depositG / G_PER_KG),
        hundredth(clothG / G_PER_KG),
        hundredth(kw),
        hundredth(depositKw),
        hundredth(clothKw),
        hundredth(kw - goodsKw));
  }

  private static double goodsKw(double waterGPerHour, Dryer dryer) {
    double kJ = Evaporation.kJPerPiece(waterGPerHour, 0, 0, dryer.roomTemperatureC());
    return Evaporation.loadKw(1, kJ, 1);
  }

  /** The moment with the most heat. */
  static BeltWater worst(List<BeltWater> moments) {
    BeltWater worst = moments.get(0);
    for (BeltWater moment : moments) {
      worst = moment.kw() > worst.kw() ? moment : worst;
    }
    return worst;
  }

  private static double hundredth(double value) {
    return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).doubleValue();
  }
}
