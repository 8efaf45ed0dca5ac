package org.potlife.plan.list;

import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.potlife.plan.list.ScreenList.Fetch;
import org.potlife.plan.list.ScreenList.Frame;
import org.potlife.plan.list.ScreenList.Job;
import org.potlife.plan.list.ScreenList.Stage;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.sheet.PlanSheet.StepLine;

/** Screens of the sheet to the screen room's list. */
final class ScreenMapping {

  /** The way of a screen through the room. */
  private static final List<String> STAGES =
      List.of(
          "degrease",
          "dry-degreased",
          "coat",
          "dry-coated",
          "expose",
          "wash-out",
          "dry-washed",
          "post-expose",
          "tape");

  private static final Comparator<OffsetDateTime> IN_TIME =
      Comparator.comparing(OffsetDateTime::toInstant);

  private final PlanIndex plan;

  ScreenMapping(PlanIndex plan) {
    this.plan = plan;
  }

  ScreenList list(LocalDate day) {
    List<ScreenLine> worked =
        plan.sheet().screens().stream()
            .filter(s -> s.steps().stream().anyMatch(step -> isWorkOf(day, step)))
            .toList();
    return new ScreenList(
        day,
        fetches(day),
        STAGES.stream()
            .map(step -> stage(day, step, worked))
            .filter(stage -> !stage.jobs().isEmpty())
            .toList(),
        new LoadMapping(plan).loads(day, worked),
        new MeshMapping(plan).meshes(day),
        worked);
  }

  static boolean isDrying(String step) {
    return step.startsWith("dry-");
  }

  static Frame frame(PlanIndex plan, ScreenLine s) {
    return new Frame(
        s.id(), s.design(), plan.chip(s.ink()), s.station(), s.meshPerCm(), s.threadUm());
  }

  private boolean isWorkOf(LocalDate day, StepLine step) {
    return plan.touches(day, step.from(), step.to());
  }

  private List<Fetch> fetches(LocalDate day) {
    List<Fetch> fetches = new ArrayList<>();
    for (ScreenLine s : plan.sheet().screens()) {
      RunLine run = plan.getRun(s.run());
      if (s.kept() && plan.dayOf(run.setUpStart()).equals(day)) {
        fetches.add(new Fetch(frame(plan, s), run.id(), run.press(), run.setUpStart()));
      }
    }
    fetches.sort(
        Comparator.comparing(Fetch::neededBy, IN_TIME)
            .thenComparing(Fetch::press)
            .thenComparingInt(f -> f.frame().station()));
    return List.copyOf(fetches);
  }

  private Stage stage(LocalDate day, String step, List<ScreenLine> screens) {
    Map<String, List<ScreenLine>> sets = new LinkedHashMap<>();
    for (ScreenLine s : screens) {
      boolean today =
          s.steps().stream().anyMatch(line -> line.step().equals(step) && isWorkOf(day, line));
      if (today) {
        sets.computeIfAbsent(s.run(), run -> new ArrayList<>()).add(s);
      }
    }
    List<Job> jobs =
        sets.values().stream()
            .map(set -> job(step, set))
            .sorted(Comparator.comparing(Job::from, IN_TIME).thenComparing(Job::run))
            .toList();
    return new Stage(step, isDrying(step), jobs);
  }

  private Job job(String step, List<ScreenLine> set) {
    List<StepLine> lines =
        set.stream()
            .flatMap(s -> s.steps().stream())
            .filter(line -> line.step().equals(step))
            .toList();
    RunLine run = plan.getRun(set.get(0).run());
    return new Job(
        lines.stream().map(StepLine::from).min(IN_TIME).orElseThrow(),
        lines.stream().map(StepLine::latestFrom).filter(Objects::nonNull).min(IN_TIME).orElse(null),
        lines.stream()
            .filter(line -> line.latestFrom() != null)
            .map(line -> Duration.between(line.from(), line.latestFrom()).toMinutes())
            .min(Comparator.naturalOrder())
            .orElse(null),
        lines.stream().map(StepLine::to).max(IN_TIME).orElseThrow(),
        lines.stream().map(StepLine::where).filter(Objects::nonNull).distinct().sorted().toList(),
        run.id(),
        run.press(),
        run.setUpStart(),
        set.stream().map(s -> frame(plan, s)).toList());
  }
}
