package org.potlife.web.room;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.potlife.floor.Downtime;
import org.potlife.floor.FloorReport;
import org.potlife.floor.RunReport;
import org.potlife.plan.list.PressList.PressDay;
import org.potlife.plan.list.RunCard;

/**
 * One press's day.
 *
 * @param planId id of the plan in force; null when there is none
 * @param list its runs; null when there is no plan
 * @param told what its crew has told of runs, by their ids
 * @param down the time in which it or its dryer is down now; null when it is not
 */
public record PressJobs(
    String planId,
    LocalDate day,
    String press,
    PressDay list,
    Map<String, RunReport> told,
    Downtime down) {

  static PressJobs of(PressScreen.Jobs jobs, String press, FloorReport floor, Instant now) {
    PressDay list =
        jobs.presses().stream().filter(day -> day.press().equals(press)).findFirst().orElse(null);
    return new PressJobs(
        jobs.planId(),
        jobs.day(),
        press,
        list,
        floor.runs().stream()
            .collect(Collectors.toMap(RunReport::run, Function.identity(), (a, b) -> b)),
        floor.down().stream()
            .filter(time -> isOf(time, press, list))
            .filter(time -> !time.from().toInstant().isAfter(now))
            .filter(time -> time.to().toInstant().isAfter(now))
            .findFirst()
            .orElse(null));
  }

  private static boolean isOf(Downtime time, String press, PressDay list) {
    return press.equals(time.press()) || (list != null && list.dryer().equals(time.dryer()));
  }

  public LocalDate dayBefore() {
    return day.minusDays(1);
  }

  public LocalDate dayAfter() {
    return day.plusDays(1);
  }

  /** The runs that have not ended, in order. */
  public List<RunCard> runs() {
    return all().stream().filter(card -> !ended(card)).toList();
  }

  /** The runs that have ended. */
  public List<RunCard> done() {
    return all().stream().filter(this::ended).toList();
  }

  private List<RunCard> all() {
    return list == null ? List.of() : list.runs();
  }

  /** What was told of a run; null when nothing was. */
  public RunReport report(RunCard card) {
    return told.get(card.run().id());
  }

  private boolean ended(RunCard card) {
    RunReport report = report(card);
    return report != null && report.ended();
  }

  /** Whether the crew has told that it has begun. */
  public boolean started(RunCard card) {
    RunReport report = report(card);
    return report != null && report.startedAt() != null;
  }

  /** Whether its first piece is still to be approved. */
  public boolean awaitsApproval(RunCard card) {
    return started(card) && report(card).approvedAt() == null && card.run().setUpMinutes() > 0;
  }

  /** A mark on a run. */
  public MarkButton mark(RunCard card, String type, String done) {
    return MarkButton.of(
        type,
        source(),
        card.run().order() + " " + card.run().design() + ", " + done,
        "run",
        card.run().id());
  }

  /** The press works again. */
  public MarkButton up() {
    return MarkButton.of("press.up", source(), press + " works again", "press", press);
  }

  /** Who tells it. */
  public String source() {
    return "press-" + press;
  }

  /** A name that may stand in a page as an id. */
  public String anchor(RunCard card) {
    return "r" + Integer.toHexString(card.run().id().hashCode());
  }
}
