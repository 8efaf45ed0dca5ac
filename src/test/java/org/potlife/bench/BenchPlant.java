package org.potlife.bench;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.potlife.demo.DemoPlant;
import org.potlife.dryer.Dryer;
import org.potlife.ink.Ink;
import org.potlife.ink.InkRoom;
import org.potlife.ink.InkSystem;
import org.potlife.ink.Process;
import org.potlife.order.Colour;
import org.potlife.order.Garments;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.order.TrialPrint;
import org.potlife.planning.PlanRequest;
import org.potlife.screen.Cabinet;
import org.potlife.screen.FrameStock;
import org.potlife.screen.ScreenRoom;
import org.potlife.shop.PlanSettings;
import org.potlife.shop.Press;
import org.potlife.shop.Shop;

/**
 * A plant like the demo plant, larger: its presses and dryers are repeated, its rooms grow with the
 * number of presses, its orders come from a seed. Dates lie so close that dispatch rules are late
 * by hours and a good plan is late with some orders.
 */
final class BenchPlant {

  private static final LocalDate DAY = LocalDate.of(2026, 12, 1);
  private static final Instant PLANNED_AT = Instant.parse("2026-11-30T13:00:00Z");
  private static final double PRESS_HOURS_PER_DAY = 9;

  /** Of the days that the work takes, those in which it is due; less is later. */
  private static final double PRESSURE = 0.5;

  private final Shop demo = DemoPlant.shop();
  private final int presses;
  private final int dryers;
  private final int runs;
  private final Random random;

  private BenchPlant(int runs, int presses, int dryers, long seed) {
    this.runs = runs;
    this.presses = presses;
    this.dryers = dryers;
    random = new Random(seed * 7919 + runs);
  }

  /** Presses and dryers for a number of runs: 3/1, 6/2, 12/4, 20/6 and in between. */
  static PlanRequest request(int runs, long seed, int solveSeconds) {
    int presses = runs <= 60 ? 3 : runs <= 250 ? 6 : runs <= 700 ? 12 : 20;
    int dryers = runs <= 60 ? 1 : runs <= 250 ? 2 : runs <= 700 ? 4 : 6;
    BenchPlant plant = new BenchPlant(runs, presses, dryers, seed);
    return new PlanRequest(
        plant.shop(), plant.orders(), DAY, PLANNED_AT, Optional.empty(), solveSeconds, seed);
  }

  private Shop shop() {
    List<Dryer> ovens = new ArrayList<>();
    double pressesPerDryer = (double) presses / dryers;
    for (int i = 0; i < dryers; i++) {
      Dryer like = demo.dryers().get(0);
      double scale = pressesPerDryer / 2;
      ovens.add(
          new Dryer(
              "D" + (i + 1),
              (int) (like.heatedLengthMm() * scale),
              (int) (like.beltLengthMm() * scale),
              like.beltWidthMm(),
              like.gapMm(),
              like.maxSpeedMPerMin(),
              like.usableHeatKw() * scale,
              like.efficiency(),
              like.roomTemperatureC(),
              like.coolMinutes()));
    }
    List<Press> line = new ArrayList<>();
    for (int i = 0; i < presses; i++) {
      line.add(press(i, "D" + (i % dryers + 1)));
    }
    return new Shop(
        "Bench plant",
        ZoneId.of("Europe/Vienna"),
        null,
        line,
        ovens,
        screenRoom(),
        inkRoom(),
        demo.inkSystems(),
        demo.inks(),
        demo.cloth(),
        settings());
  }

  private static PlanSettings settings() {
    return PlanSettings.defaults();
  }

  private Press press(int number, String dryer) {
    Press like = demo.presses().get(number % 3);
    return new Press(
        "P" + (number + 1),
        like.stations(),
        like.printWidthMm(),
        like.printHeightMm(),
        like.processes(),
        List.of(),
        dryer,
        like.ratePerHour(),
        like.minRatePerHour(),
        like.changeoverMinutes(),
        like.minutesPerScreen(),
        like.tearDownMinutesPerScreen(),
        like.washUpToDarkerMinutes(),
        like.washUpToLighterMinutes(),
        like.firstPieceMinutes(),
        like.trialPieces(),
        like.maxPauseMinutes(),
        like.maxWaitToDryerS(),
        true,
        demo.presses().get(0).shifts(),
        List.of(),
        List.of());
  }

  private int scaled(int ofDemo) {
    return Math.max(1, (int) Math.ceil(ofDemo * presses / 4.0));
  }

  private ScreenRoom screenRoom() {
    ScreenRoom like = demo.screenRoom();
    List<Cabinet> cabinets = new ArrayList<>();
    for (int i = 0; i < scaled(2); i++) {
      Cabinet cabinet = like.cabinets().get(i % 2);
      cabinets.add(
          new Cabinet(
              "C" + (i + 1),
              cabinet.frames(),
              cabinet.airflowFactor(),
              cabinet.reserveFactor(),
              cabinet.gatherMinutes(),
              cabinet.climate()));
    }
    List<FrameStock> frames =
        like.frames().stream()
            .map(
                stock ->
                    new FrameStock(stock.meshPerCm(), stock.threadUm(), scaled(stock.count()) * 2))
            .toList();
    return new ScreenRoom(
        scaled(like.degreasingSinks()),
        scaled(like.coatingBenches()),
        scaled(like.exposureUnits()),
        scaled(like.washOutBooths()),
        scaled(like.tapingTables()),
        like.storeHumidityPercent(),
        like.emulsion(),
        like.stages(),
        cabinets,
        frames,
        List.of(),
        like.shifts(),
        List.of());
  }

  private InkRoom inkRoom() {
    InkRoom like = demo.inkRoom();
    return new InkRoom(
        scaled(like.mixers()),
        like.containerG(),
        like.scaleStepG(),
        like.mixMinutes(),
        like.activateMinutes(),
        like.screenChargeG(),
        like.lossPercent(),
        like.reserveG(),
        like.shifts(),
        List.of());
  }

  private List<Order> orders() {
    List<Order> orders = new ArrayList<>();
    double hours = 0;
    int made = 0;
    List<Draft> drafts = new ArrayList<>();
    while (made < runs) {
      Draft draft = draft(drafts.size(), runs - made);
      drafts.add(draft);
      made += draft.prints().size();
      hours += draft.hours();
    }
    double days = Math.max(1, hours / (presses * PRESS_HOURS_PER_DAY));
    for (Draft draft : drafts) {
      orders.add(order(draft, days));
    }
    return orders;
  }

  /** An order without its dates. */
  private record Draft(int number, int quantity, boolean dark, List<Print> prints) {

    double hours() {
      int screens = prints.stream().mapToInt(print -> print.colours().size()).sum();
      return prints.size() * (quantity / 330.0 + 0.3) + screens * 0.12;
    }
  }

  private Draft draft(int number, int left) {
    int quantity = (int) Math.max(24, Math.min(700, Math.exp(5.1 + 0.7 * random.nextGaussian())));
    boolean dark = random.nextInt(3) > 0;
    int prints = left > 1 && random.nextInt(100) < 15 ? 2 : 1;
    List<Print> made = new ArrayList<>();
    for (int i = 0; i < prints; i++) {
      boolean repeat = random.nextInt(100) < 8;
      int design = repeat ? random.nextInt(number + 1) : number;
      made.add(print("design-" + design + "-" + i, i == 0 ? "front" : "back", design * 31L + i));
    }
    return new Draft(number, quantity, dark, made);
  }

  /** The same design always has the same colours. */
  private Print print(String design, String position, long ofDesign) {
    Random own = new Random(ofDesign * 104729 + runs);
    boolean discharge = own.nextInt(100) < 60;
    List<Ink> inks =
        demo.inks().stream()
            .filter(ink -> discharge == process(ink).equals(Process.DISCHARGE))
            .toList();
    int colours = 1 + Math.min(own.nextInt(4) + own.nextInt(4), inks.size() - 1);
    List<Ink> chosen = new ArrayList<>(inks);
    java.util.Collections.shuffle(chosen, own);
    List<Colour> screens = new ArrayList<>();
    for (Ink ink : chosen.subList(0, colours)) {
      FrameStock mesh = demo.screenRoom().frames().get(own.nextInt(3));
      double coverage = 4 + own.nextInt(22);
      screens.add(new Colour(ink.id(), coverage, mesh.meshPerCm(), mesh.threadUm(), null, null));
    }
    int width = 120 + own.nextInt(180);
    return new Print(
        design,
        position,
        discharge ? Process.DISCHARGE : Process.WATER_BASED,
        true,
        discharge ? TrialPrint.PASSED : TrialPrint.NOT_NEEDED,
        1,
        width,
        width + own.nextInt(100),
        0,
        screens);
  }

  private Process process(Ink ink) {
    return demo.findInkSystem(ink.system()).map(InkSystem::process).orElseThrow();
  }

  private Order order(Draft draft, double days) {
    double dueDay = 0.3 + random.nextDouble() * days * PRESSURE;
    OffsetDateTime due = workingTime(dueDay, 8 + random.nextInt(12));
    OffsetDateTime from = workingTime(Math.max(-1, dueDay - 1 - random.nextInt(4)), 7);
    int priority = 1 + Math.min(4, random.nextInt(3) + random.nextInt(3));
    Garments garments =
        new Garments(
            "shirt",
            "shirt",
            draft.dark() ? "black" : "sand",
            draft.dark() ? 8.0 : 75.0,
            100.0,
            "reactive",
            draft.quantity(),
            draft.quantity() + draft.quantity() / 20 + 4,
            from,
            700,
            540,
            180);
    return new Order(
        "B-%05d".formatted(draft.number()),
        "Bench",
        priority,
        due,
        false,
        garments,
        draft.prints());
  }

  /** So many working days after the plan's day. */
  private static OffsetDateTime workingTime(double daysAhead, int hour) {
    LocalDate date = DAY;
    int step = daysAhead < 0 ? -1 : 1;
    for (int i = 0; i < Math.abs((int) Math.floor(daysAhead)); ) {
      date = date.plusDays(step);
      if (date.getDayOfWeek().getValue() <= 5) {
        i++;
      }
    }
    return date.atTime(hour, 0).atZone(ZoneId.of("Europe/Vienna")).toOffsetDateTime();
  }
}
