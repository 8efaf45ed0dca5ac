package org.potlife.planning;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.potlife.room.EmulsionReading;
import org.potlife.screen.Cabinet;
import org.potlife.screen.Emulsion;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.sheet.PlanSheet.StepLine;
import org.potlife.shop.Shop;
import org.potlife.simulation.Drying;

/**
 * When the published loads of the cabinets are dry by what has been read since (R5). A look at one
 * of a load's screens speaks for the load: a dry one ends its drying, after a wet one all of it
 * begins anew; what was seen before the last screen went in does not count. Without a look the
 * climate decides.
 */
final class DryingNews {

  /** Differences up to this are no news: the crew opens a door when it comes to it. */
  static final int NO_NEWS_S = 60;

  private final Shop shop;
  private final Horizon horizon;
  private final Instant now;
  private final Map<String, Drying> climate = new HashMap<>();
  private final Map<String, OffsetDateTime> firstIn = new HashMap<>();
  private final Map<String, OffsetDateTime> lastIn = new HashMap<>();
  private final Set<String> onPress = new HashSet<>();
  private final Map<String, List<StepLine>> loads = new HashMap<>();
  private final Map<String, OffsetDateTime> news = new HashMap<>();
  private final Map<String, EmulsionReading> lastLook = new HashMap<>();

  DryingNews(PlanRequest request, Horizon horizon, PlanSheet published) {
    shop = request.shop();
    now = request.plannedAt();
    this.horizon = horizon;
    Emulsion emulsion = shop.screenRoom().emulsion();
    for (Cabinet cabinet : shop.screenRoom().cabinets()) {
      climate.put(cabinet.id(), CabinetClimate.drying(cabinet, emulsion, request.rooms(), horizon));
    }
    Set<String> begunRuns = new HashSet<>();
    for (RunLine run : published.runs()) {
      if (run.setUpStart().toInstant().isBefore(now)) {
        begunRuns.add(run.id());
      }
    }
    for (ScreenLine screen : published.screens()) {
      for (StepLine step : screen.steps()) {
        if (step.drying()) {
          if (screen.runs().stream().anyMatch(begunRuns::contains)) {
            onPress.add(door(step));
          }
          firstIn.merge(door(step), step.from(), (a, b) -> a.isBefore(b) ? a : b);
          lastIn.merge(door(step), step.from(), (a, b) -> a.isAfter(b) ? a : b);
        }
      }
    }
    for (Cabinet cabinet : shop.screenRoom().cabinets()) {
      loads.put(cabinet.id(), loads(published, cabinet.id()));
    }
    request.rooms().emulsion().stream()
        .sorted(Comparator.comparing(look -> look.at().toInstant()))
        .forEach(
            look ->
                published.screens().stream()
                    .filter(screen -> screen.id().equals(look.screen()))
                    .findFirst()
                    .flatMap(screen -> lookedAt(screen, look))
                    .filter(step -> !look.at().isBefore(lastIn.get(door(step))))
                    .ifPresent(step -> lastLook.put(door(step), look)));
    loads.values().forEach(this::followLoads);
  }

  /** A step of each load of a cabinet, in the order of time. */
  private static List<StepLine> loads(PlanSheet published, String cabinet) {
    Map<String, StepLine> loads = new HashMap<>();
    for (ScreenLine screen : published.screens()) {
      for (StepLine step : screen.steps()) {
        if (step.drying() && step.where().equals(cabinet)) {
          loads.putIfAbsent(door(step), step);
        }
      }
    }
    return loads.values().stream()
        .sorted(Comparator.comparing(step -> step.to().toInstant()))
        .toList();
  }

  /** A load that is dry later than published keeps those out that were to come next (R6). */
  private void followLoads(List<StepLine> loads) {
    OffsetDateTime shutUntil = null;
    for (StepLine load : loads) {
      OffsetDateTime in = firstIn.get(door(load));
      boolean begun = in.toInstant().isBefore(now);
      Optional<OffsetDateTime> dry = isFollowed(load) ? Optional.empty() : readDry(load);
      if (!begun && shutUntil != null && in.isBefore(shutUntil)) {
        news.put(door(load), load.to().plusSeconds(shutUntil.toEpochSecond() - in.toEpochSecond()));
      } else {
        dry.ifPresent(at -> news.put(door(load), at));
        if (begun || dry.isEmpty()) {
          shutUntil = dry.orElse(load.to());
        }
      }
    }
  }

  private static String door(StepLine step) {
    return step.where() + "@" + step.to().toInstant();
  }

  /**
   * A look tells of the drying that the screen was in: by the looks before it the first one that
   * was not over then or ended too late for what was to follow, else the last one begun.
   */
  private Optional<StepLine> lookedAt(ScreenLine screen, EmulsionReading look) {
    StepLine last = null;
    List<StepLine> steps = screen.steps();
    for (int i = 0; i < steps.size(); i++) {
      StepLine step = steps.get(i);
      if (step.drying() && !step.from().isAfter(look.at()) && cabinet(step) != null) {
        last = step;
        OffsetDateTime wetUntil = wetUntil(step);
        boolean heldUp = i + 1 < steps.size() && wetUntil.isAfter(steps.get(i + 1).from());
        if (heldUp || wetUntil.isAfter(look.at())) {
          break;
        }
      }
    }
    return Optional.ofNullable(last);
  }

  private OffsetDateTime wetUntil(StepLine step) {
    EmulsionReading before = lastLook.get(door(step));
    return before == null || before.dry() || isFollowed(step)
        ? step.to()
        : horizon.time(dryAfter(step, horizon.secondsUp(before.at())));
  }

  /** Whether it is out for sure: the next load is in, or some of it is on a press. */
  private boolean isFollowed(StepLine step) {
    return onPress.contains(door(step))
        || loads.get(step.where()).stream()
            .anyMatch(
                next ->
                    next.to().isAfter(step.to())
                        && firstIn.get(door(next)).toInstant().isBefore(now));
  }

  private int dryAfter(StepLine step, int begins) {
    Cabinet cabinet = cabinet(step);
    return climate.get(cabinet.id()).dryAt(begins, requiredPaS(step, cabinet));
  }

  /** When the screens of a drying step are dry as it stands now; empty when as published. */
  Optional<OffsetDateTime> dryAt(StepLine step) {
    return Optional.ofNullable(news.get(door(step)));
  }

  private Optional<OffsetDateTime> readDry(StepLine step) {
    EmulsionReading look = lastLook.get(door(step));
    boolean over = !step.to().toInstant().isAfter(now);
    if (cabinet(step) == null || (over && (look == null || look.dry()))) {
      return Optional.empty();
    }
    if (look != null && look.dry()) {
      return look.at().isBefore(step.to().minusSeconds(NO_NEWS_S))
          ? Optional.of(horizon.time(horizon.secondsUp(look.at())))
          : Optional.empty();
    }
    int begins =
        look == null ? horizon.seconds(lastIn.get(door(step))) : horizon.secondsUp(look.at());
    OffsetDateTime dry = horizon.time(dryAfter(step, begins));
    return dry.isAfter(step.to().plusSeconds(NO_NEWS_S)) ? Optional.of(dry) : Optional.empty();
  }

  private Cabinet cabinet(StepLine step) {
    int index = ScreenSteps.cabinet(step, shop);
    return index < 0 ? null : shop.screenRoom().cabinets().get(index);
  }

  private double requiredPaS(StepLine step, Cabinet cabinet) {
    return shop.screenRoom().emulsion().requiredPaH(step.step()) * cabinet.reserveFactor() * 3600;
  }
}
