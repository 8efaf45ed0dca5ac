package org.potlife.plan.list;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import org.potlife.sheet.PlanSheet.ScreenLine;

/**
 * The screen room's list of one local day.
 *
 * @param fetches kept stencils that go from the store to a press, by when they are needed
 * @param stages the stages in working order, each with its jobs; stages without a job are left out
 * @param loads cabinet loads, by when the first screen goes in
 * @param meshes the frames of each mesh that the plan uses on the day
 * @param screens the screens that are worked on, with all their steps
 */
public record ScreenList(
    LocalDate day,
    List<Fetch> fetches,
    List<Stage> stages,
    List<Load> loads,
    List<MeshUse> meshes,
    List<ScreenLine> screens) {

  /** The list of a day. */
  public static ScreenList of(PlanIndex plan, LocalDate day) {
    return new ScreenMapping(plan).list(day);
  }

  /** Whether the screen room has nothing to do. */
  public boolean empty() {
    return fetches.isEmpty() && stages.isEmpty();
  }

  /** A screen as it is told from others. */
  public record Frame(
      String screen, String design, InkChip ink, int station, double meshPerCm, double threadUm) {}

  /**
   * A kept stencil that needs no work.
   *
   * @param neededBy start of the set-up that takes it
   */
  public record Fetch(Frame frame, String run, String press, OffsetDateTime neededBy) {}

  /**
   * All jobs of one stage.
   *
   * @param step name of the stage as on the sheet
   * @param drying whether it happens in a cabinet
   */
  public record Stage(String step, boolean drying, List<Job> jobs) {}

  /**
   * One stage of the screens of one set, which move together.
   *
   * @param from earliest start: when the first screen is planned to start
   * @param latestFrom latest start that still meets the run, other screens aside; may be unknown
   * @param slackMinutes how much later than planned the screen with the least slack may start, full
   *     minutes, other screens aside; may be unknown
   * @param to when the last screen is planned to be through
   * @param where the places used
   * @param run first run that takes the screens
   * @param setUpStart start of that run's set-up
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Job(
      OffsetDateTime from,
      OffsetDateTime latestFrom,
      Long slackMinutes,
      OffsetDateTime to,
      List<String> where,
      String run,
      String press,
      OffsetDateTime setUpStart,
      List<Frame> frames) {}

  /**
   * One load of a cabinet, which is not opened before it is dry.
   *
   * @param firstIn when gathering starts
   * @param lastIn when the last screen goes in
   * @param shutBy when the door shuts at the latest
   * @param dryAt when all come out
   * @param capacity frames that the cabinet takes; 0 when the shop no longer has the cabinet
   * @param drying how it dries; null when the shop no longer has the cabinet
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Load(
      String cabinet,
      String step,
      OffsetDateTime firstIn,
      OffsetDateTime lastIn,
      OffsetDateTime shutBy,
      OffsetDateTime dryAt,
      int capacity,
      List<Frame> frames,
      DryingCourse drying) {}

  /**
   * How a load dries from the last screen going in until it comes out.
   *
   * @param requiredPaH what it needs, the cabinet's reserve included, Pa h
   * @param reachedPaH what it gets in the cabinet's air, its airflow included, Pa h
   * @param stops stretches in which the air is above the emulsion's limit and nothing dries
   */
  public record DryingCourse(
      double requiredPaH, double reachedPaH, double airflowFactor, List<Stop> stops) {}

  /**
   * A stretch in which a load does not dry.
   *
   * @param since when the air of the cabinet came to be above the limit, at the earliest when the
   *     load was in
   * @param read whether the air was read; else it is what is expected at this time of day
   * @param driesFromC temperature at which the same water in the air is at the limit, degrees
   *     Celsius; null when that is above 60
   * @param dryCabinets other cabinets whose air dries all that time
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Stop(
      OffsetDateTime since,
      OffsetDateTime until,
      double temperatureC,
      double humidityPercent,
      double limitPercent,
      boolean read,
      Double driesFromC,
      List<String> dryCabinets) {}

  /**
   * The frames of one mesh on the day.
   *
   * @param owned frames that the plant owns
   * @param kept frames that carry kept stencils and so are never free
   * @param mostInUse most frames in use at once, kept ones included
   * @param mostFrom when so many are first in use
   * @param holders runs whose screens hold frames then, when all are in use
   * @param competitors runs that wait for their screens and take their frames only after that
   */
  public record MeshUse(
      double meshPerCm,
      double threadUm,
      int owned,
      int kept,
      int mostInUse,
      OffsetDateTime mostFrom,
      List<String> holders,
      List<Competitor> competitors) {

    /** Whether there is a moment without a free frame. */
    public boolean allInUse() {
      return mostInUse >= owned;
    }
  }

  /**
   * A run that waits for its screens while all frames of their mesh are in use.
   *
   * @param run name of the run
   * @param waitMinutes how long its press waits for the screens
   * @param framesFrom when it takes its first frame of the mesh
   */
  public record Competitor(String run, String press, long waitMinutes, OffsetDateTime framesFrom) {}
}
