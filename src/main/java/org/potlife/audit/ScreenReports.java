package org.potlife.audit;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.potlife.room.BrokenScreen;
import org.potlife.room.ClimateReading;
import org.potlife.room.EmulsionReading;
import org.potlife.room.RoomState;
import org.potlife.screen.Cabinet;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.sheet.PlanSheet.StepLine;
import org.potlife.shop.Shop;

/**
 * What the screen room's reports say about the published screens, stated anew: which of them are
 * not where the published plan has them. Runs that rely on such screens need not stay where they
 * are (R22).
 */
final class ScreenReports {

  private final Shop shop;
  private final RoomState rooms;
  private final long now;
  private final Map<String, OffsetDateTime> lastIn = new HashMap<>();
  private final Map<String, OffsetDateTime> firstIn = new HashMap<>();
  private final Map<String, List<StepLine>> loads = new TreeMap<>();
  private final Map<String, EmulsionReading> looks = new HashMap<>();
  private final Map<String, EmulsionReading> looksByStep = new HashMap<>();
  private final Set<String> elsewhere = new HashSet<>();
  private final Set<String> outForSure = new HashSet<>();
  private final Set<String> changed = new HashSet<>();

  /**
   * @param screens screens of the published plan, each with legible steps
   * @param begunRuns runs whose set-up has begun
   */
  ScreenReports(
      Shop shop, RoomState rooms, long now, List<ScreenLine> screens, Set<String> begunRuns) {
    this.shop = shop;
    this.rooms = rooms;
    this.now = now;
    List<ScreenLine> legible = screens.stream().filter(ScreenReports::legible).toList();
    legible.forEach(this::note);
    legible.stream()
        .filter(screen -> screen.runs().stream().anyMatch(begunRuns::contains))
        .flatMap(screen -> dryings(screen).stream())
        .forEach(step -> outForSure.add(door(step)));
    rooms.emulsion().stream()
        .sorted(Comparator.comparing(look -> look.at().toInstant()))
        .forEach(look -> note(look, legible));
    loads.values().forEach(this::followLoads);
    legible.forEach(
        screen ->
            dryings(screen).stream()
                .filter(step -> looks.containsKey(door(step)))
                .forEach(
                    step ->
                        looksByStep.put(
                            name(screen.id(), step.from().toEpochSecond()),
                            looks.get(door(step)))));
    Map<List<String>, List<ScreenLine>> sets = new LinkedHashMap<>();
    legible.forEach(
        screen -> sets.computeIfAbsent(screen.runs(), runs -> new ArrayList<>()).add(screen));
    Set<String> broken = new HashSet<>();
    rooms.broken().stream().map(BrokenScreen::screen).forEach(broken::add);
    sets.forEach(
        (runs, set) -> {
          boolean onPress = runs.stream().anyMatch(begunRuns::contains);
          boolean anyBroken = set.stream().anyMatch(screen -> broken.contains(screen.id()));
          if (anyBroken
              || !onPress
                  && set.stream().anyMatch(screen -> isElsewhere(screen, firstExposure(set)))) {
            set.forEach(screen -> changed.add(screen.id()));
          }
        });
  }

  private static boolean legible(ScreenLine screen) {
    return screen.id() != null
        && screen.runs() != null
        && Completeness.there(screen.steps()).stream()
            .allMatch(
                step ->
                    step.step() != null
                        && isTime(step.from())
                        && isTime(step.to())
                        && step.where() != null);
  }

  private static boolean isTime(OffsetDateTime time) {
    return time != null && time.getYear() >= 1970 && time.getYear() < 9000;
  }

  /** Once the first of a set is exposed, the set is out of the store. */
  private static long firstExposure(List<ScreenLine> set) {
    return set.stream()
        .flatMap(screen -> Completeness.there(screen.steps()).stream())
        .filter(step -> Stage.find(step.step()).orElse(null) == Stage.EXPOSE)
        .mapToLong(step -> step.from().toEpochSecond())
        .min()
        .orElse(Long.MAX_VALUE);
  }

  private static String door(StepLine step) {
    return step.where() + " " + step.to().toEpochSecond();
  }

  private static List<StepLine> dryings(ScreenLine screen) {
    return Completeness.there(screen.steps()).stream()
        .filter(step -> Stage.find(step.step()).filter(Stage::drying).isPresent())
        .toList();
  }

  private void note(ScreenLine screen) {
    for (StepLine step : dryings(screen)) {
      lastIn.merge(door(step), step.from(), (a, b) -> b.isAfter(a) ? b : a);
      if (firstIn.merge(door(step), step.from(), (a, b) -> b.isBefore(a) ? b : a) == step.from()
          && loadsOf(step).stream().noneMatch(load -> door(load).equals(door(step)))) {
        loadsOf(step).add(step);
      }
    }
  }

  private void note(EmulsionReading look, List<ScreenLine> screens) {
    for (ScreenLine screen : screens) {
      StepLine seen = null;
      boolean found = false;
      long heldUp = Long.MIN_VALUE;
      for (StepLine step : Completeness.there(screen.steps())) {
        boolean drying = Stage.find(step.step()).filter(Stage::drying).isPresent();
        found |= step.from().toEpochSecond() < heldUp;
        heldUp = Long.MIN_VALUE;
        if (!found && drying && !step.from().isAfter(look.at()) && cabinet(step).isPresent()) {
          seen = step;
          heldUp = wetUntil(step);
          found = heldUp > look.at().toEpochSecond();
        }
      }
      boolean doorShut = seen != null && !look.at().isBefore(lastIn.get(door(seen)));
      if (doorShut && screen.id().equals(look.screen())) {
        looks.put(door(seen), look);
      }
    }
  }

  private long wetUntil(StepLine step) {
    EmulsionReading before = looks.get(door(step));
    return before == null || before.dry() || wasFollowed(step.where(), step.to().toEpochSecond())
        ? step.to().toEpochSecond()
        : climate(cabinet(step).orElseThrow()).reaches(needed(step), before.at().toEpochSecond());
  }

  private double needed(StepLine step) {
    return Stage.find(step.step()).orElseThrow().dryingPaH(shop.screenRoom())
        * cabinet(step).orElseThrow().reserveFactor()
        * (1 - Tolerance.ARITHMETIC);
  }

  private Optional<Cabinet> cabinet(StepLine step) {
    return shop.screenRoom().cabinets().stream()
        .filter(each -> each.id().equals(step.where()))
        .findFirst();
  }

  private List<StepLine> loadsOf(StepLine step) {
    return loads.computeIfAbsent(step.where(), cabinet -> new ArrayList<>());
  }

  /** Marks the loads that are not as published, and those that find the cabinet shut. */
  private void followLoads(List<StepLine> ofCabinet) {
    ofCabinet.sort(Comparator.comparing(step -> step.to().toInstant()));
    long shutUntil = Long.MIN_VALUE;
    for (StepLine load : ofCabinet) {
      long in = firstIn.get(door(load)).toEpochSecond();
      long dry = wasFollowed(load.where(), load.to().toEpochSecond()) ? -1 : dryByReport(load);
      if (in >= now && in < shutUntil) {
        elsewhere.add(door(load));
      } else {
        if (dry >= 0) {
          elsewhere.add(door(load));
        }
        if (in < now || dry < 0) {
          shutUntil = dry >= 0 ? dry : load.to().toEpochSecond();
        }
      }
    }
  }

  /** Whether a load was out for sure: the next one had gone in, or some of it was on a press. */
  boolean wasFollowed(String cabinet, long out) {
    return outForSure.contains(cabinet + " " + out)
        || loads.getOrDefault(cabinet, List.of()).stream()
            .anyMatch(
                load ->
                    load.to().toEpochSecond() > out
                        && firstIn.get(door(load)).toEpochSecond() < now);
  }

  private boolean isElsewhere(ScreenLine screen, long firstExposure) {
    List<StepLine> steps = Completeness.there(screen.steps());
    for (int i = 0; i < steps.size(); i++) {
      StepLine step = steps.get(i);
      Optional<Stage> stage = Stage.find(step.step());
      if (stage.isPresent() && stage.get().drying()) {
        if (elsewhere.contains(door(step))) {
          return true;
        }
        boolean toExposure =
            i + 1 < steps.size()
                && Stage.find(steps.get(i + 1).step()).orElse(null) == Stage.EXPOSE;
        if (toExposure
            && step.to().toEpochSecond() < now
            && firstExposure >= now
            && storeWets(step.to().toEpochSecond(), firstExposure)) {
          return true;
        }
      }
    }
    return false;
  }

  /** When a load is dry by report and climate, epoch seconds; -1 when as published. */
  private long dryByReport(StepLine step) {
    Optional<Cabinet> cabinet = cabinet(step);
    EmulsionReading look = looks.get(door(step));
    long out = step.to().toEpochSecond();
    boolean over = out <= now;
    if (cabinet.isEmpty() || over && (look == null || look.dry())) {
      return -1;
    }
    if (look != null && look.dry()) {
      return look.at().isBefore(step.to().minusSeconds(Tolerance.NO_NEWS_SECONDS))
          ? look.at().toEpochSecond()
          : -1;
    }
    long begins = (look != null ? look.at() : lastIn.get(door(step))).toEpochSecond();
    double needed = needed(step);
    Climate climate = climate(cabinet.get());
    return climate.dryingPaH(begins, out + Tolerance.NO_NEWS_SECONDS) >= needed
        ? -1
        : climate.reaches(needed, begins);
  }

  private Climate climate(Cabinet cabinet) {
    return new Climate(
        cabinet, shop.screenRoom().emulsion().humidityLimitPercent(), shop.timeZone(), rooms);
  }

  /** Whether the store is known to be too humid at some moment between the two. */
  boolean storeWets(long in, long out) {
    double limit = shop.screenRoom().emulsion().humidityLimitPercent();
    boolean holds = false;
    boolean within = false;
    for (ClimateReading reading : rooms.climate()) {
      if (reading.place().equals(ClimateReading.STORE)) {
        boolean humid = reading.humidityPercent() > limit;
        if (reading.at().toEpochSecond() <= in) {
          holds = humid;
        } else if (reading.at().toEpochSecond() < out) {
          within |= humid;
        }
      }
    }
    return holds || within;
  }

  private static String name(String screen, long from) {
    return screen + " since " + from;
  }

  /** The last look at the published load in which a screen has been since that moment. */
  Optional<EmulsionReading> lastLook(String screen, long since) {
    return Optional.ofNullable(looksByStep.get(name(screen, since)));
  }

  /** Whether the published screen is not where the published plan has it. */
  boolean isChanged(String screen) {
    return changed.contains(screen);
  }
}
