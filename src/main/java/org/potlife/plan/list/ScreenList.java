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
 * @param screens the screens that are worked on, with all their steps
 */
public record ScreenList(
    LocalDate day,
    List<Fetch> fetches,
    List<Stage> stages,
    List<Load> loads,
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
   * @param to when the last screen is planned to be through
   * @param where the places used
   * @param run first run that takes the screens
   * @param setUpStart start of that run's set-up
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Job(
      OffsetDateTime from,
      OffsetDateTime latestFrom,
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
   */
  public record Load(
      String cabinet,
      String step,
      OffsetDateTime firstIn,
      OffsetDateTime lastIn,
      OffsetDateTime shutBy,
      OffsetDateTime dryAt,
      int capacity,
      List<Frame> frames) {}
}
