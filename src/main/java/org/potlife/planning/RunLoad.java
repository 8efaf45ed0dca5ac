package org.potlife.planning;

import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.potlife.dryer.Belt;
import org.potlife.dryer.Dryer;
import org.potlife.dryer.Evaporation;
import org.potlife.ink.Ink;
import org.potlife.ink.InkSystem;
import org.potlife.order.Colour;
import org.potlife.order.Garments;
import org.potlife.order.GramsPerPiece;
import org.potlife.order.Print;
import org.potlife.shop.Shop;
import org.potlife.simulation.RunSpec.BeltFeed;

/** What one piece of a print draws of its inks and asks of a dryer. */
final class RunLoad {

  private final Shop shop;
  private final GramsPerPiece perPiece;
  private final Map<Print, PrintLoad> loads = new IdentityHashMap<>();

  /** Water that one piece of a print gets from its inks, g, and the longest dwell of them, s. */
  private record PrintLoad(double waterG, int dwellS) {}

  RunLoad(PlanRequest request) {
    shop = request.shop();
    perPiece = new GramsPerPiece(shop, request.ink().learned());
  }

  /** Grams per piece by ink, in order of first use. */
  Map<String, Double> gramsPerPiece(Print print) {
    Map<String, Double> grams = new LinkedHashMap<>();
    for (Colour colour : print.colours()) {
      grams.merge(colour.ink(), gramsPerPiece(print, colour), Double::sum);
    }
    return grams;
  }

  private double gramsPerPiece(Print print, Colour colour) {
    return perPiece.of(print, colour).grams();
  }

  /** Longest dwell that the print's inks ask for, s. */
  int dwellS(Print print) {
    return load(print).dwellS();
  }

  /** Fastest belt for the print, um/min. */
  int speedLimit(Print print, Dryer dryer) {
    double byDwell = Belt.speedMPerMin(dryer.heatedLengthMm(), dwellS(print));
    return (int) Math.floor(Math.min(byDwell, dryer.maxSpeedMPerMin()) * 1e6 + 1e-6);
  }

  /** Load per piece and hour; null where the garment is wider than the belt. */
  BeltFeed feed(Print print, Garments garments, Dryer dryer) {
    int lanes = Belt.lanes(dryer.beltWidthMm(), garments.widthMm(), dryer.gapMm());
    if (lanes < 1) {
      return null;
    }
    Flow flow = flow(print, garments, dryer);
    return new BeltFeed(
        speedLimit(print, dryer),
        (int) Math.ceil(flow.areaPerRate() - 1e-9),
        (int) Math.ceil(flow.heatPerRate() - 1e-9));
  }

  /**
   * Load per piece and hour as it is, not rounded up for the engine.
   *
   * @param areaPerRate belt length used, um/min
   * @param heatPerRate heat used, 0.1 W
   */
  record Flow(double areaPerRate, double heatPerRate) {}

  /** Exact load of garments that fit the belt. */
  Flow flow(Print print, Garments garments, Dryer dryer) {
    int lanes = Belt.lanes(dryer.beltWidthMm(), garments.widthMm(), dryer.gapMm());
    int pitchMm = garments.lengthMm() + dryer.gapMm();
    double kJ = kJPerPiece(print, garments, dryer);
    return new Flow(
        Belt.areaMPerMin(1, pitchMm, lanes) * 1e6,
        Evaporation.loadKw(1, kJ, dryer.efficiency()) * 1e4);
  }

  private double kJPerPiece(Print print, Garments garments, Dryer dryer) {
    double cotton = garments.cottonPercent() / 100;
    double regain =
        cotton * shop.cloth().cottonRegainPercent()
            + (1 - cotton) * shop.cloth().otherRegainPercent();
    return Evaporation.kJPerPiece(
        load(print).waterG(), garments.massG(), regain, dryer.roomTemperatureC());
  }

  private PrintLoad load(Print print) {
    return loads.computeIfAbsent(print, this::loadOf);
  }

  private PrintLoad loadOf(Print print) {
    double waterG = 0;
    int dwellS = 0;
    for (Colour colour : print.colours()) {
      InkSystem system = system(colour);
      waterG += gramsPerPiece(print, colour) * system.waterPercent() / 100;
      dwellS = Math.max(dwellS, system.dwellS());
    }
    return new PrintLoad(waterG, dwellS);
  }

  private InkSystem system(Colour colour) {
    Ink ink = shop.findInk(colour.ink()).orElseThrow();
    return shop.findInkSystem(ink.system()).orElseThrow();
  }
}
