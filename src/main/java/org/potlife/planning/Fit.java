package org.potlife.planning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.potlife.dryer.Dryer;
import org.potlife.ink.InkRoom;
import org.potlife.ink.Process;
import org.potlife.order.Colour;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.order.TrialPrint;
import org.potlife.screen.FrameStock;
import org.potlife.shop.Press;
import org.potlife.shop.Shop;
import org.potlife.simulation.InkRoomSpec;
import org.potlife.simulation.RunSpec.BeltFeed;

/** Which presses take a print, and if none does, why (R1, R8, R12, R15, R18, R19). */
final class Fit {

  /** An obstacle with the rule it comes from. */
  record Obstacle(String rule, String cause) {}

  private final Shop shop;
  private final RunLoad load;

  Fit(Shop shop, RunLoad load) {
    this.shop = shop;
    this.load = load;
  }

  /** What keeps a print off every press, or an empty list. */
  List<Obstacle> obstacles(Order order, Print print) {
    List<Obstacle> found = new ArrayList<>();
    for (Colour colour : print.colours()) {
      if (shop.findInk(colour.ink()).isEmpty()) {
        found.add(new Obstacle("R9", "the plant has no ink called " + colour.ink()));
      }
    }
    if (!found.isEmpty()) {
      return found;
    }
    if (!print.artworkApproved()) {
      found.add(new Obstacle("R18", "the artwork of " + print.design() + " is not approved"));
    }
    if (print.process() == Process.DISCHARGE) {
      discharge(order, print, found);
    }
    screens(print, found);
    inkFitsContainer(print, found);
    return found;
  }

  /** R18, but for the garments: the artwork is approved, and the cloth has been tried. */
  static boolean isReleased(Print print) {
    return print.artworkApproved()
        && (print.process() != Process.DISCHARGE || print.trialPrint() == TrialPrint.PASSED);
  }

  private void discharge(Order order, Print print, List<Obstacle> found) {
    double cotton = order.garments().cottonPercent();
    double limit = shop.cloth().dischargeMinCottonPercent();
    if (cotton < limit) {
      found.add(
          new Obstacle(
              "R19",
              "the cloth does not discharge: %s %% cotton, discharge needs %s %%"
                  .formatted(number(cotton), number(limit))));
    } else if (!shop.cloth().dischargeableDyes().contains(order.garments().dye())) {
      found.add(
          new Obstacle(
              "R19",
              "the cloth does not discharge: dyed with %s, dischargeable are %s"
                  .formatted(
                      order.garments().dye(),
                      String.join(", ", shop.cloth().dischargeableDyes()))));
    } else if (print.trialPrint() == TrialPrint.FAILED) {
      found.add(new Obstacle("R18", "the trial print on this cloth failed"));
    } else if (print.trialPrint() != TrialPrint.PASSED) {
      found.add(new Obstacle("R18", "the trial print on this cloth has not passed yet"));
    }
  }

  private void screens(Print print, List<Obstacle> found) {
    int largest = 0;
    for (var cabinet : shop.screenRoom().cabinets()) {
      largest = Math.max(largest, cabinet.frames());
    }
    if (print.colours().size() > largest) {
      found.add(
          new Obstacle(
              "R6",
              "its %d screens do not fit into a drying cabinet together; the largest takes %d"
                  .formatted(print.colours().size(), largest)));
    }
    for (Colour colour : print.colours()) {
      long needed = print.colours().stream().filter(other -> sameMesh(other, colour)).count();
      int owned = frames(colour.meshPerCm(), colour.threadUm());
      if (owned < needed) {
        found.add(
            new Obstacle(
                "R8",
                "it needs %d frames with mesh %s-%s, the plant has %d"
                    .formatted(
                        needed, number(colour.meshPerCm()), number(colour.threadUm()), owned)));
        return;
      }
    }
  }

  private static boolean sameMesh(Colour one, Colour other) {
    return one.meshPerCm().equals(other.meshPerCm()) && one.threadUm().equals(other.threadUm());
  }

  private int frames(double meshPerCm, double threadUm) {
    return shop.screenRoom().frames().stream()
        .filter(stock -> stock.meshPerCm() == meshPerCm && stock.threadUm() == threadUm)
        .mapToInt(FrameStock::count)
        .sum();
  }

  private void inkFitsContainer(Print print, List<Obstacle> found) {
    InkRoom inkRoom = shop.inkRoom();
    int room = inkRoom.containerG() - inkRoom.reserveG() - inkRoom.scaleStepG() + 1;
    int charge = inkRoom.screenChargeG() * mostStationsOfAnInk(print);
    if (room < Math.max(charge * 2, charge + InkRoomSpec.LEAST_DRAW_G)) {
      found.add(
          new Obstacle(
              "R12",
              "charging its screens takes more ink than a container holds: " + charge + " g"));
    }
  }

  private static int mostStationsOfAnInk(Print print) {
    Map<String, Integer> stations = new HashMap<>();
    print.colours().forEach(colour -> stations.merge(colour.ink(), 1, Integer::sum));
    return Collections.max(stations.values());
  }

  /** Why a press does not take a print, or null if it does. */
  Obstacle obstacle(Order order, Print print, Press press) {
    if (!press.inService()) {
      return new Obstacle("R1", press.id() + " is out of service");
    }
    int stations = print.colours().size() + print.flashes();
    if (stations > press.stations()) {
      return new Obstacle(
          "R1",
          "needs %d stations (%d colours, %d flashes), %s has %d"
              .formatted(
                  stations, print.colours().size(), print.flashes(), press.id(), press.stations()));
    }
    if (print.widthMm() > press.printWidthMm() || print.heightMm() > press.printHeightMm()) {
      return new Obstacle(
          "R1",
          "image of %d x %d mm is larger than the print area of %s, %d x %d mm"
              .formatted(
                  print.widthMm(),
                  print.heightMm(),
                  press.id(),
                  press.printWidthMm(),
                  press.printHeightMm()));
    }
    if (!press.processes().contains(print.process())) {
      return new Obstacle("R1", press.id() + " does not print " + print.process());
    }
    if (!press.garmentKinds().isEmpty()
        && !press.garmentKinds().contains(order.garments().kind())) {
      return new Obstacle("R1", press.id() + " does not take " + order.garments().kind());
    }
    return dryerObstacle(order, print, press);
  }

  private Obstacle dryerObstacle(Order order, Print print, Press press) {
    Dryer dryer = shop.findDryer(press.dryer()).orElseThrow();
    BeltFeed feed = load.feed(print, order.garments(), dryer);
    if (feed == null) {
      return new Obstacle(
          "R1",
          "garment of %d mm is wider than the belt of %s"
              .formatted(order.garments().widthMm(), dryer.id()));
    }
    int rate = rateAlone(feed, press, dryer);
    if (rate < press.minRatePerHour()) {
      return new Obstacle(
          "R15",
          "%s dries %d pieces/h of it at most, %s runs at %d/h or more"
              .formatted(dryer.id(), rate, press.id(), press.minRatePerHour()));
    }
    return null;
  }

  /** Pieces per hour with the dryer all to itself. */
  static int rateAlone(BeltFeed feed, Press press, Dryer dryer) {
    int byArea =
        feed.areaPerRate() == 0 ? Integer.MAX_VALUE : feed.speedLimit() / feed.areaPerRate();
    int byHeat =
        feed.heatPerRate() == 0 ? Integer.MAX_VALUE : usableHeat(dryer) / feed.heatPerRate();
    return Math.min(press.ratePerHour(), Math.min(byArea, byHeat));
  }

  /** Usable heat, 0.1 W. */
  static int usableHeat(Dryer dryer) {
    return (int) Math.floor(dryer.usableHeatKw() * 1e4);
  }

  private static String number(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }
}
