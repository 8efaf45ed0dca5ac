package org.potlife.web.room;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.potlife.plan.list.PlanIndex;
import org.potlife.plan.list.ScreenList;
import org.potlife.plan.list.ScreenList.Fetch;
import org.potlife.plan.list.ScreenList.Frame;
import org.potlife.plan.list.ScreenList.Load;
import org.potlife.plan.list.ScreenList.Stage;
import org.potlife.room.ScreenLife;
import org.potlife.room.ScreenStatus;

/** Puts the screen room's day in working order, with what was reported. */
final class ScreenJobs {

  /** What a screen is when a stage is done. */
  private static final Map<String, ScreenLife> AFTER =
      Map.of(
          "degrease", ScreenLife.DEGREASED_DRYING,
          "coat", ScreenLife.COATED_DRYING,
          "dry-coated", ScreenLife.DRY,
          "expose", ScreenLife.EXPOSED,
          "wash-out", ScreenLife.WASHED_OUT_DRYING,
          "tape", ScreenLife.READY);

  private final PlanIndex plan;
  private final ScreenList list;
  private final Map<String, ScreenStatus> known = new HashMap<>();

  ScreenJobs(PlanIndex plan, LocalDate day, List<ScreenStatus> statuses) {
    this.plan = plan;
    this.list = ScreenList.of(plan, day);
    statuses.forEach(status -> known.put(status.screen(), status));
  }

  /** The day's screens, by design and station. */
  List<Frame> frames() {
    return jobs().stream()
        .flatMap(job -> job.frames().stream())
        .distinct()
        .sorted(Comparator.comparing(Frame::design).thenComparing(Frame::station))
        .toList();
  }

  List<ScreenJob> jobs() {
    List<ScreenJob> jobs = new ArrayList<>();
    list.fetches().forEach(fetch -> jobs.add(fetch(fetch)));
    for (Stage stage : list.stages()) {
      if (!stage.drying()) {
        stage.jobs().forEach(job -> jobs.add(hands(stage.step(), job)));
      }
    }
    list.loads().forEach(load -> jobs.add(load(load)));
    jobs.sort(Comparator.comparing(job -> job.from().toInstant()));
    return jobs;
  }

  private ScreenJob fetch(Fetch fetch) {
    List<Frame> frames = List.of(fetch.frame());
    return new ScreenJob(
        "fetch",
        "fetch",
        fetch.neededBy(),
        fetch.neededBy(),
        null,
        null,
        List.of(),
        plan.runName(fetch.run()),
        fetch.press(),
        fetch.neededBy(),
        frames,
        null,
        reached(frames, ScreenLife.ON_PRESS),
        "",
        List.of(moved("at the press", frames, ScreenLife.ON_PRESS)));
  }

  private ScreenJob hands(String step, ScreenList.Job job) {
    ScreenLife after = AFTER.get(step);
    return new ScreenJob(
        "hands",
        step,
        job.from(),
        job.to(),
        job.latestFrom(),
        job.slackMinutes(),
        job.where(),
        plan.runName(job.run()),
        job.press(),
        job.setUpStart(),
        job.frames(),
        null,
        after != null && reached(job.frames(), after),
        "",
        after == null ? List.of() : List.of(moved(step, job.frames(), after)));
  }

  private ScreenJob load(Load load) {
    String screen = load.frames().get(0).screen();
    String name = load.cabinet() + ", " + load.frames().size() + " screens";
    ScreenStatus.Mark look = lastLook(load);
    return new ScreenJob(
        "load",
        load.step(),
        load.firstIn(),
        load.dryAt(),
        null,
        null,
        List.of(load.cabinet()),
        null,
        null,
        null,
        load.frames(),
        load,
        look != null && look.dry(),
        look == null ? "" : look.dry() ? "dry" : "wet",
        List.of(
            MarkButton.look(name + ": dry", screen, true),
            MarkButton.look(name + ": still wet", screen, false)));
  }

  /** The last look at any screen of the load since it went in. */
  private ScreenStatus.Mark lastLook(Load load) {
    OffsetDateTime in = load.firstIn();
    return load.frames().stream()
        .map(frame -> known.get(frame.screen()))
        .filter(status -> status != null && status.history() != null)
        .flatMap(status -> status.history().stream())
        .filter(mark -> mark.dry() != null && !mark.at().isBefore(in))
        .max(Comparator.comparing(mark -> mark.at().toInstant()))
        .orElse(null);
  }

  private boolean reached(List<Frame> frames, ScreenLife life) {
    return frames.stream()
        .map(frame -> known.get(frame.screen()))
        .allMatch(
            status ->
                status != null
                    && status.basis() == ScreenStatus.Basis.REPORTED
                    && status.state() != null
                    && status.state().ordinal() >= life.ordinal());
  }

  private static MarkButton moved(String what, List<Frame> frames, ScreenLife state) {
    return MarkButton.moved(
        frames.get(0).design() + ", " + what,
        frames.stream().map(Frame::screen).toList(),
        state.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
  }
}
