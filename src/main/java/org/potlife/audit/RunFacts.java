package org.potlife.audit;

import java.util.List;
import org.potlife.dryer.Dryer;
import org.potlife.ink.Ink;
import org.potlife.ink.InkSystem;
import org.potlife.order.Colour;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.shop.Press;

/**
 * A run that could be read: everything it names exists, its times are there and in order.
 *
 * @param printIndex which print of the order, from 0
 * @param inks ink of each colour of the print
 * @param systems ink system of each colour
 * @param gramsByStation ink of each colour on one piece, g
 * @param setUpStart epoch seconds, as all times here
 * @param rates stretches of constant rate, those that could be read
 */
record RunFacts(
    RunLine line,
    Order order,
    int printIndex,
    Press press,
    Dryer dryer,
    List<Ink> inks,
    List<InkSystem> systems,
    List<Double> gramsByStation,
    long setUpStart,
    long firstPieceAt,
    long printStart,
    long printEnd,
    long offBelt,
    long coolAt,
    List<Rate> rates) {

  /** A constant rate, pieces/h. */
  record Rate(long from, long to, double perHour) {}

  String id() {
    return line.id();
  }

  Print print() {
    return order.prints().get(printIndex);
  }

  /** Whether the sheet shows a set-up. */
  boolean hasSetUp() {
    return printStart > setUpStart || line.screensToChange() > 0;
  }

  /** Seconds of hardening that the slowest of its inks needs in the heated length. */
  int dwellS() {
    return systems.stream().mapToInt(InkSystem::dwellS).max().orElse(0);
  }

  /** Garments that lie side by side on the belt. */
  int lanes() {
    int gap = dryer.gapMm();
    return (dryer.beltWidthMm() + gap) / Math.max(1, order.garments().widthMm() + gap);
  }

  /** Belt length that one row of garments takes, m. */
  double pitchM() {
    return (order.garments().lengthMm() + dryer.gapMm()) / 1000.0;
  }

  /** Ink on one piece from all stations with this ink, g. */
  double gramsPerPiece(String ink) {
    double grams = 0;
    for (int i = 0; i < inks.size(); i++) {
      if (inks.get(i).id().equals(ink)) {
        grams += gramsByStation.get(i);
      }
    }
    return grams;
  }

  /** Stations that carry this ink. */
  int stationsWith(String ink) {
    return (int) inks.stream().filter(i -> i.id().equals(ink)).count();
  }

  Colour colour(int station) {
    return print().colours().get(station);
  }
}
