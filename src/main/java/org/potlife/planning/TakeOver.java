package org.potlife.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.potlife.dryer.Dryer;
import org.potlife.sheet.PlanSheet.RateLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.sheet.PlanSheet.StepLine;
import org.potlife.shop.Press;
import org.potlife.shop.Shop;
import org.potlife.simulation.RunSpec;
import org.potlife.simulation.TakenOver;
import org.potlife.simulation.TakenOver.BeltLoad;
import org.potlife.simulation.TakenOver.BeltTail;
import org.potlife.simulation.TakenOver.Busy;
import org.potlife.simulation.TakenOver.CabinetLoad;

/** Turns what is frozen into bookings of the engine (R22). */
final class TakeOver {

  private final Shop shop;
  private final Horizon horizon;
  private final Frozen frozen;
  private final InkInHand ink;
  private final List<PlannedRun> runs;
  private final ScreenSets sets;
  private final Map<String, Integer> lots;
  private final Map<String, Integer> orders;
  private final Map<String, Integer> runIndex = new HashMap<>();
  private final Map<Integer, Integer> released = new HashMap<>();
  private final List<List<String>> closed = new ArrayList<>();

  TakeOver(
      Shop shop,
      Horizon horizon,
      Frozen frozen,
      InkInHand ink,
      List<PlannedRun> runs,
      int movable,
      ScreenSets sets,
      Map<String, Integer> lots,
      Map<String, Integer> orders) {
    this.shop = shop;
    this.horizon = horizon;
    this.frozen = frozen;
    this.ink = ink;
    this.runs = runs;
    this.sets = sets;
    this.lots = lots;
    this.orders = orders;
    for (int i = movable; i < runs.size(); i++) {
      runIndex.put(runs.get(i).id(), i);
    }
  }

  private int press(RunLine line) {
    return shop.presses().indexOf(shop.findPress(line.press()).orElseThrow());
  }

  /** By press, the taken-over run that it holds at last; -1 if none. */
  int[] lastRunByPress() {
    int[] last = new int[shop.presses().size()];
    Arrays.fill(last, -1);
    for (RunLine line : frozen.runs()) {
      last[press(line)] = runIndex.getOrDefault(line.id(), -1);
    }
    return last;
  }

  TakenOver bookings(RunSpec[] specs) {
    TakenOver empty =
        TakenOver.nothing(shop.presses().size(), lots.size(), orders.size(), sets.list().size());
    List<BeltLoad> belts = new ArrayList<>();
    List<BeltTail> tails = new ArrayList<>();
    for (RunLine line : frozen.runs()) {
      int press = press(line);
      empty.pressFree()[press] =
          Math.max(empty.pressFree()[press], horizon.seconds(line.printEnd()));
      Integer index = runIndex.get(line.id());
      if (index == null) {
        continue;
      }
      RunSpec spec = specs[index];
      int lot = spec.garmentLot();
      empty.lotFree()[lot] = Math.max(empty.lotFree()[lot], horizon.secondsUp(line.coolAt()));
      empty.lotStage()[lot]++;
      int off = horizon.secondsUp(line.offBelt());
      empty.orderEnd()[spec.order()] = Math.max(empty.orderEnd()[spec.order()], off);
      int set = spec.screenSet();
      int screens = sets.list().get(set).keys().size();
      int offPress =
          horizon.seconds(line.printEnd()) + shop.presses().get(press).tearDownS(screens);
      empty.setFree()[set] = Math.max(empty.setFree()[set], offPress);
      released.merge(set, offPress, Math::max);
      empty.setPress()[set] = press;
      sets.findMovable(sets.list().get(set).keys())
          .ifPresent(again -> empty.setPress()[again.index()] = press);
      belts.addAll(beltLoads(line, spec));
      tails.add(tail(line));
    }
    FramesUnderWay frames = frames();
    frames.closed().forEach(set -> closed.add(sets.list().get(set).ids()));
    frozen.survivors().stream()
        .filter(
            line ->
                sets.findSetOfSurvivor(line)
                    .filter(set -> frames.closed().contains(set.index()))
                    .isPresent())
        .forEach(line -> closed.add(List.of(line.id())));
    return new TakenOver(
        empty.pressFree(),
        empty.lotFree(),
        empty.lotStage(),
        empty.orderEnd(),
        empty.setFree(),
        empty.setPress(),
        belts,
        tails,
        ink.mixing(),
        hands(),
        loads(),
        frames.freeAt(),
        ink.live());
  }

  /** A slower run that comes now must not hold up what is promised. */
  private BeltTail tail(RunLine line) {
    Dryer dryer = shop.findDryer(shop.findPress(line.press()).orElseThrow().dryer()).orElseThrow();
    int end = horizon.seconds(line.printEnd());
    int off = horizon.secondsUp(line.offBelt());
    double least = dryer.beltLengthMm() * 1000.0 * 60 / Math.max(1, off - end);
    return new BeltTail(
        shop.dryers().indexOf(dryer), end, off, (int) Math.min(1e9, Math.floor(least)));
  }

  /** Screen ids of the sets that no further run may use, since their frames are promised. */
  List<List<String>> closed() {
    return closed;
  }

  private List<BeltLoad> beltLoads(RunLine line, RunSpec spec) {
    List<BeltLoad> loads = new ArrayList<>();
    Press press = shop.findPress(line.press()).orElseThrow();
    Dryer owner = shop.findDryer(press.dryer()).orElseThrow();
    int dryer = shop.dryers().indexOf(owner);
    RunSpec.BeltFeed feed = spec.feeds()[dryer];
    int off = horizon.secondsUp(line.offBelt());
    if (feed == null || off <= 0) {
      return loads;
    }
    int first = horizon.seconds(line.firstPieceAt());
    int print = horizon.seconds(line.printStart());
    loads.add(new BeltLoad(dryer, first, off, feed.speedLimit(), 0, 0));
    if (print > first) {
      // a break may lie in between, so that they come faster than the two times tell
      int seconds = press.firstPieceMinutes() * 60;
      seconds = seconds == 0 ? print - first : Math.min(seconds, print - first);
      int trialRate = (line.trialPieces() * 3600 + seconds - 1) / seconds;
      loads.add(load(dryer, first, print, feed, trialRate));
    }
    for (RateLine rate : line.rates()) {
      loads.add(
          load(
              dryer,
              horizon.seconds(rate.from()),
              horizon.seconds(rate.to()),
              feed,
              rate.ratePerHour()));
    }
    return loads;
  }

  private static BeltLoad load(int dryer, int from, int to, RunSpec.BeltFeed feed, int rate) {
    return new BeltLoad(
        dryer, from, to, feed.speedLimit(), rate * feed.areaPerRate(), rate * feed.heatPerRate());
  }

  /** A screen that nobody needs any more is only taken out of what it is in. */
  private List<StepLine> stepsToDo(ScreenLine screen) {
    return sets.isAdopted(screen)
        ? screen.steps()
        : screen.steps().stream().filter(step -> horizon.seconds(step.from()) < 0).toList();
  }

  private List<Busy> hands() {
    List<Busy> busy = new ArrayList<>();
    for (ScreenLine screen : frozen.screens()) {
      for (StepLine step : stepsToDo(screen)) {
        ScreenSteps.place(step, shop)
            .ifPresent(
                place ->
                    busy.add(
                        new Busy(
                            place.kind(),
                            place.lane(),
                            Math.max(0, horizon.seconds(step.from())),
                            horizon.seconds(step.to()))));
      }
    }
    return busy.stream().filter(work -> work.to() > 0).toList();
  }

  private List<CabinetLoad> loads() {
    Map<String, CabinetLoad> loads = new HashMap<>();
    for (ScreenLine screen : frozen.screens()) {
      for (StepLine step : stepsToDo(screen)) {
        int cabinet = ScreenSteps.cabinet(step, shop);
        int to = horizon.secondsUp(step.to());
        if (cabinet >= 0 && to > 0) {
          CabinetLoad load =
              new CabinetLoad(
                  cabinet, ScreenSteps.dryStage(step), horizon.seconds(step.from()), to, 1);
          loads.merge(
              cabinet + "@" + to,
              load,
              (a, b) ->
                  new CabinetLoad(
                      a.cabinet(),
                      a.stage(),
                      Math.min(a.from(), b.from()),
                      a.to(),
                      a.frames() + b.frames()));
        }
      }
    }
    return List.copyOf(loads.values());
  }

  private FramesUnderWay frames() {
    List<FramesUnderWay.Held> held = new ArrayList<>();
    int reclaimS = ShopMapper.seconds(shop.screenRoom().stages().reclaim());
    Map<String, ScreenSet> setOf = new HashMap<>();
    for (ScreenSet set : sets.list()) {
      sets.begunLines(set).forEach(line -> setOf.put(line.id(), set));
    }
    for (ScreenLine line : frozen.survivors()) {
      sets.findSetOfSurvivor(line).ifPresent(set -> setOf.put(line.id(), set));
    }
    for (ScreenLine line : frozen.screens()) {
      int mesh = sets.mesh(line.meshPerCm(), line.threadUm());
      List<StepLine> steps = stepsToDo(line);
      if (!line.kept() && mesh >= 0 && !steps.isEmpty()) {
        int from = horizon.seconds(steps.get(0).from());
        int done = horizon.secondsUp(steps.get(steps.size() - 1).to());
        ScreenSet set = setOf.get(line.id());
        int back =
            set == null
                ? backUnused(line, done, reclaimS)
                : Math.max(done, released.getOrDefault(set.index(), done))
                    + reclaimS * set.keys().size();
        held.add(
            new FramesUnderWay.Held(
                mesh,
                from,
                set == null ? -1 : set.index(),
                back,
                set != null && sets.movableRuns(set) > 0));
      }
    }
    return new FramesUnderWay(shop, sets, held);
  }

  /** A screen that no run uses any more comes back at once, or came back after its last run. */
  private int backUnused(ScreenLine line, int done, int reclaimS) {
    int off = horizon.secondsUp(line.releasedAt());
    long ofSet =
        frozen.screens().stream().filter(other -> other.runs().equals(line.runs())).count();
    return off <= 0 ? off + reclaimS * (int) ofSet : Math.max(0, done) + reclaimS;
  }
}
