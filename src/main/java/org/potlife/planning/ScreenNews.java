package org.potlife.planning;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.potlife.room.BrokenScreen;
import org.potlife.room.ClimateReading;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.sheet.PlanSheet.StepLine;

/**
 * What the reports of the screen room change on the published plan: loads that are dry earlier or
 * later than published (R5), dry coated screens that a humid store wetted again (R7), screens that
 * broke. A run that has begun keeps its screens; the others of a set with news are not frozen.
 */
final class ScreenNews {

  /**
   * Where the screens of a set go on.
   *
   * @param stage number of the next stage among {@link ScreenSteps#STAGES}
   * @param notBefore when they come out of the stage before
   */
  record Resume(int stage, OffsetDateTime notBefore) {}

  private final Instant now;
  private final Horizon horizon;
  private final double humidityLimitPercent;
  private final int shelfLifeHours;
  private final List<ClimateReading> store;
  private final Set<String> brokenIds;
  private final Map<String, ScreenLine> standing = new HashMap<>();
  private final Map<String, Resume> resumes = new HashMap<>();
  private final Set<String> gone = new HashSet<>();
  private final Set<String> spent = new HashSet<>();
  private final Set<String> survivors = new HashSet<>();
  private final Set<String> late = new HashSet<>();

  ScreenNews(PlanRequest request, Horizon horizon) {
    this.horizon = horizon;
    now = request.plannedAt();
    humidityLimitPercent = request.shop().screenRoom().emulsion().humidityLimitPercent();
    shelfLifeHours = request.shop().screenRoom().emulsion().shelfLifeHours();
    store =
        request.rooms().climate().stream()
            .filter(reading -> reading.place().equals(ClimateReading.STORE))
            .toList();
    brokenIds =
        request.rooms().broken().stream().map(BrokenScreen::screen).collect(Collectors.toSet());
    request.published().ifPresent(sheet -> read(sheet, new DryingNews(request, horizon, sheet)));
  }

  private void read(PlanSheet sheet, DryingNews drying) {
    Set<String> begunRuns =
        sheet.runs().stream()
            .filter(run -> run.setUpStart().toInstant().isBefore(now))
            .map(RunLine::id)
            .collect(Collectors.toSet());
    for (List<ScreenLine> set : Frozen.bySet(sheet.screens())) {
      boolean onPress = set.get(0).runs().stream().anyMatch(begunRuns::contains);
      boolean news = false;
      if (set.stream().anyMatch(line -> brokenIds.contains(line.id()))) {
        breakUp(set, onPress, drying);
        news = true;
      } else if (!onPress) {
        news = dryingChanged(set, drying);
      }
      if (news) {
        set.get(0).runs().stream().filter(run -> !begunRuns.contains(run)).forEach(late::add);
      }
    }
  }

  /** The whole ones of a broken set serve on, unless they are on a press now. */
  private void breakUp(List<ScreenLine> set, boolean onPress, DryingNews drying) {
    for (ScreenLine line : set) {
      boolean whole = !brokenIds.contains(line.id());
      if (onPress) {
        spent.add(line.id());
      } else if (whole && isBegun(line) && goesOnAsPublished(line, drying)) {
        survivors.add(line.id());
      } else {
        gone.add(line.id());
      }
    }
  }

  private boolean goesOnAsPublished(ScreenLine line, DryingNews drying) {
    for (int i = 0; i < line.steps().size(); i++) {
      StepLine step = line.steps().get(i);
      boolean dries = step.drying();
      if (dries && (drying.dryAt(step).isPresent() || isWettedBefore(List.of(line), i + 1))) {
        return false;
      }
    }
    return true;
  }

  /** Whether the next step is the exposure, and the dry coated screens got wet in store before. */
  private boolean isWettedBefore(List<ScreenLine> set, int next) {
    return set.stream()
            .allMatch(
                line ->
                    next < line.steps().size() && line.steps().get(next).step().equals("expose"))
        && isWetted(
            set.get(0).steps().get(next - 1).to(),
            set.stream()
                .map(line -> line.steps().get(next).from())
                .min(Comparator.comparing(OffsetDateTime::toInstant))
                .get());
  }

  private boolean isBegun(ScreenLine line) {
    return !line.steps().isEmpty() && line.steps().get(0).from().toInstant().isBefore(now);
  }

  private boolean dryingChanged(List<ScreenLine> set, DryingNews drying) {
    List<ScreenLine> made = set.stream().filter(line -> !line.steps().isEmpty()).toList();
    if (made.isEmpty()) {
      return false;
    }
    if (!moveTogether(made)) {
      return mixedSetChanged(made, drying);
    }
    List<StepLine> steps = made.get(0).steps();
    for (int i = 0; i < steps.size(); i++) {
      StepLine step = steps.get(i);
      if (step.drying()) {
        var dry = drying.dryAt(step);
        if (dry.isPresent()) {
          goOnBehind(made, i, dry.get());
          return true;
        }
        if (isWettedBefore(made, i + 1)) {
          goOn(made, i + 1, ScreenSteps.STAGES.indexOf(step.step()), horizon.time(0));
          return true;
        }
      }
    }
    return false;
  }

  private static boolean moveTogether(List<ScreenLine> set) {
    return set.stream()
            .map(
                line ->
                    line.steps().stream()
                        .filter(StepLine::drying)
                        .map(step -> step.where() + step.to().toInstant())
                        .toList())
            .distinct()
            .count()
        == 1;
  }

  /** Screens made after another one broke are behind the rest; those with news are made anew. */
  private boolean mixedSetChanged(List<ScreenLine> set, DryingNews drying) {
    boolean changed = set.stream().anyMatch(line -> !goesOnAsPublished(line, drying));
    for (ScreenLine line : set) {
      if (changed && isBegun(line) && goesOnAsPublished(line, drying)) {
        survivors.add(line.id());
      } else if (changed) {
        gone.add(line.id());
      }
    }
    return changed;
  }

  /** The drying step {@code i} ends at {@code dry}; one that has not begun is planned anew. */
  private void goOnBehind(List<ScreenLine> set, int i, OffsetDateTime dry) {
    int stage = ScreenSteps.STAGES.indexOf(set.get(0).steps().get(i).step());
    boolean begun =
        set.stream().anyMatch(line -> line.steps().get(i).from().toInstant().isBefore(now));
    if (begun) {
      boolean wetAgain =
          stage + 1 == ScreenSteps.STAGES.indexOf("expose") && isWetted(dry, horizon.time(0));
      boolean tooOld =
          stage + 1 == ScreenSteps.STAGES.indexOf("expose")
              && dry.toInstant().isBefore(now.minusSeconds(3600L * shelfLifeHours));
      if (tooOld) {
        set.forEach(line -> gone.add(line.id()));
        return;
      }
      goOn(set, i + 1, wetAgain ? stage : stage + 1, wetAgain ? horizon.time(0) : dry);
      for (ScreenLine line : set) {
        StepLine step = line.steps().get(i);
        standing
            .get(line.id())
            .steps()
            .set(i, new StepLine(step.step(), step.from(), dry, step.latestFrom(), step.where()));
      }
    } else {
      OffsetDateTime before =
          set.stream()
              .map(line -> line.steps().get(i - 1).to())
              .max(Comparator.comparing(OffsetDateTime::toInstant))
              .get();
      goOn(set, i, stage, before);
    }
  }

  /**
   * Keeps the first steps of a set; it goes on with a stage, or from the start if none is begun.
   */
  private void goOn(List<ScreenLine> set, int kept, int stage, OffsetDateTime notBefore) {
    for (ScreenLine line : set) {
      if (set.stream().noneMatch(this::isBegun)) {
        gone.add(line.id());
      } else {
        resumes.put(line.id(), new Resume(stage, notBefore));
      }
      standing.put(line.id(), withSteps(line, new ArrayList<>(line.steps().subList(0, kept))));
    }
  }

  private static ScreenLine withSteps(ScreenLine line, List<StepLine> steps) {
    return new ScreenLine(
        line.id(),
        line.run(),
        line.runs(),
        line.ink(),
        line.design(),
        line.station(),
        line.meshPerCm(),
        line.threadUm(),
        line.kept(),
        line.readyAt(),
        line.releasedAt(),
        steps);
  }

  /** Whether dry coated screens lay in a store over the emulsion's limit before they left it. */
  private boolean isWetted(OffsetDateTime in, OffsetDateTime out) {
    boolean humid = false;
    for (ClimateReading reading : store) {
      boolean over = reading.humidityPercent() > humidityLimitPercent;
      if (!reading.at().isAfter(in)) {
        humid = over;
      } else if (reading.at().isBefore(out)) {
        humid |= over;
      }
    }
    return humid && in.toInstant().isBefore(now) && !out.toInstant().isBefore(now);
  }

  /** Ids of all screens that are reported broken. */
  Set<String> brokenIds() {
    return brokenIds;
  }

  /** The screen as it stands now. */
  ScreenLine standing(ScreenLine published) {
    return standing.getOrDefault(published.id(), published);
  }

  /** Where the set of a screen goes on; null when it stands as published. */
  Resume resume(String screen) {
    return resumes.get(screen);
  }

  /** Whether the screen is of no use any more. */
  boolean isGone(String screen) {
    return gone.contains(screen);
  }

  /** Whether the screen serves only the run that is on the press with it. */
  boolean isSpent(String screen) {
    return spent.contains(screen);
  }

  /** Whether the screen is whole and its set is not. */
  boolean isSurvivor(String screen) {
    return survivors.contains(screen);
  }

  /** Whether the run cannot rely on its published screens any more. */
  boolean isLate(String run) {
    return late.contains(run);
  }
}
