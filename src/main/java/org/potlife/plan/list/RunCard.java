package org.potlife.plan.list;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.OffsetDateTime;
import java.util.List;
import org.potlife.sheet.PlanSheet.RunLine;

/**
 * What the crew needs at the press for one run.
 *
 * @param run times, pieces, rate as on the sheet
 * @param garments style and colour of the garments
 * @param dueAt when the order is due; null when the order is unknown
 * @param lateMinutes how late the order ends, minutes; 0 when in time
 * @param frozen whether it was taken over unchanged from the published plan
 * @param flashes flash and cooling units that take a station each
 * @param passes strokes per colour
 * @param stations screens by station
 * @param belt settings of the dryer from the first piece until the last is off the belt
 * @param onBelt what the run asks of the dryer, with the longest wait before it; null when its
 *     order or ink is unknown
 * @param notes press notes, one per ink system
 * @param waits why it did not start when the press was free
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record RunCard(
    RunLine run,
    String garments,
    OffsetDateTime dueAt,
    long lateMinutes,
    boolean frozen,
    int flashes,
    int passes,
    List<Station> stations,
    List<BeltList.Setting> belt,
    BeltRun onBelt,
    List<Note> notes,
    List<Wait> waits) {

  /**
   * One station with its screen.
   *
   * @param kept whether the screen comes from the store
   * @param draws batches of its ink, in the order in which they are drawn from
   */
  public record Station(
      int number,
      InkChip ink,
      String screen,
      double meshPerCm,
      double threadUm,
      boolean kept,
      List<Draw> draws) {}

  /**
   * A batch that the run draws from.
   *
   * @param from first stroke with it
   * @param to last stroke with it
   * @param useBy latest stroke; null for inks without agent
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Draw(String batch, OffsetDateTime from, OffsetDateTime to, OffsetDateTime useBy) {}

  /** What the ink system's data sheet says about squeegee, flood and speed. */
  public record Note(String system, String text) {}

  /** A stretch of waiting, its cause in words. */
  public record Wait(String cause, long minutes, String words) {}
}
