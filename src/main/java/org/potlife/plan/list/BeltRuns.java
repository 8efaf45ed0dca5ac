package org.potlife.plan.list;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.potlife.dryer.Belt;
import org.potlife.dryer.Dryer;
import org.potlife.dryer.Evaporation;
import org.potlife.ink.InkSystem;
import org.potlife.order.Colour;
import org.potlife.order.Garments;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.sheet.PlanSheet.BeltLine;
import org.potlife.sheet.PlanSheet.RateLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.shop.ClothRules;
import org.potlife.shop.Press;

/** What the runs of a plan ask of their dryers, worked out from orders and set-up. */
final class BeltRuns {

  private static final double SECONDS_PER_HOUR = 3600;

  private final PlanIndex plan;
  private final Map<String, Optional<BeltRun>> known = new HashMap<>();

  BeltRuns(PlanIndex plan) {
    this.plan = plan;
  }

  /** Runs of a stretch whose order the plan still knows. */
  List<BeltRun> of(BeltLine line) {
    return line.runs().stream().flatMap(id -> find(id).stream()).toList();
  }

  /** Empty when order, ink or dryer of the run are not known or its garment is too wide. */
  Optional<BeltRun> find(String id) {
    return known.computeIfAbsent(id, any -> plan.findRun(id).flatMap(this::of));
  }

  private Optional<BeltRun> of(RunLine run) {
    Optional<Order> order = plan.findOrder(run.order());
    Optional<Print> print = plan.findPrint(run).filter(this::inksKnown);
    Optional<Dryer> dryer = plan.shop().findDryer(run.dryer());
    if (order.isEmpty() || print.isEmpty() || dryer.isEmpty()) {
      return Optional.empty();
    }
    return of(run, order.get().garments(), print.get(), dryer.get());
  }

  private Optional<BeltRun> of(RunLine run, Garments garments, Print print, Dryer dryer) {
    int lanes = Belt.lanes(dryer.beltWidthMm(), garments.widthMm(), dryer.gapMm());
    int dwellS = systems(print).stream().mapToInt(InkSystem::dwellS).max().orElse(0);
    if (lanes < 1 || dwellS < 1) {
      return Optional.empty();
    }
    double speed =
        Math.min(dryer.maxSpeedMPerMin(), Belt.speedMPerMin(dryer.heatedLengthMm(), dwellS));
    int pitchMm = garments.lengthMm() + dryer.gapMm();
    double depositG = depositWaterG(print);
    double regain = regainPercent(garments);
    return Optional.of(
        new BeltRun(
            run.id(),
            plan.runName(run.id()),
            run.press(),
            run.process(),
            dwellS,
            speed,
            garments.widthMm(),
            lanes,
            pitchMm,
            (int) Math.floor(Belt.piecesPerHour(lanes, speed, pitchMm) + 1e-9),
            depositG,
            Evaporation.waterG(0, garments.massG(), regain),
            Evaporation.kJPerPiece(depositG, garments.massG(), regain, dryer.roomTemperatureC()),
            run.waits().stream()
                .filter(wait -> wait.cause().equals("dryer"))
                .mapToLong(wait -> wait.minutes())
                .sum(),
            press(run).map(Press::maxWaitToDryerS).orElse(0)));
  }

  private boolean inksKnown(Print print) {
    return print.colours().stream().allMatch(colour -> system(colour).isPresent());
  }

  private List<InkSystem> systems(Print print) {
    return print.colours().stream().flatMap(colour -> system(colour).stream()).toList();
  }

  private Optional<InkSystem> system(Colour colour) {
    return plan.findInk(colour.ink()).flatMap(ink -> plan.shop().findInkSystem(ink.system()));
  }

  private double depositWaterG(Print print) {
    double waterG = 0;
    for (Colour colour : print.colours()) {
      waterG +=
          plan.gramsPerPiece().of(print, colour).grams()
              * system(colour).orElseThrow().waterPercent()
              / 100;
    }
    return waterG;
  }

  private double regainPercent(Garments garments) {
    ClothRules cloth = plan.shop().cloth();
    double cotton = garments.cottonPercent() / 100;
    return cotton * cloth.cottonRegainPercent() + (1 - cotton) * cloth.otherRegainPercent();
  }

  private Optional<Press> press(RunLine run) {
    return plan.shop().findPress(run.press());
  }

  /** Pieces per hour that a run lays onto the belt at this moment; 0 in breaks and behind it. */
  double ratePerHour(String id, OffsetDateTime at) {
    RunLine run = plan.getRun(id);
    for (RateLine rate : run.rates()) {
      if (within(at, rate.from(), rate.to())) {
        return rate.ratePerHour();
      }
    }
    if (run.trialPieces() > 0 && within(at, run.firstPieceAt(), run.printStart())) {
      // a break within these minutes spreads the few trial pieces over it
      Duration trial = Duration.between(run.firstPieceAt(), run.printStart());
      return run.trialPieces() * SECONDS_PER_HOUR / trial.toSeconds();
    }
    return 0;
  }

  private static boolean within(OffsetDateTime at, OffsetDateTime from, OffsetDateTime to) {
    return !at.isBefore(from) && at.isBefore(to);
  }

  /** Those runs of a stretch whose dwell sets its speed; none when the belt cannot go faster. */
  List<BeltRun> settingTheSpeed(BeltLine line) {
    List<BeltRun> runs = of(line);
    double least = runs.stream().mapToDouble(BeltRun::speedLimitMPerMin).min().orElse(0);
    double most =
        plan.shop().findDryer(line.dryer()).map(Dryer::maxSpeedMPerMin).orElse(Double.MAX_VALUE);
    return runs.stream()
        .filter(run -> run.speedLimitMPerMin() <= least + BeltMapping.SAME_SPEED)
        .filter(run -> least < most)
        .toList();
  }
}
