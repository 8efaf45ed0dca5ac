package org.potlife.plan.list;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import org.potlife.planning.StaffedHours;

/**
 * A plan as it is drawn: time across, presses down, what feeds and bounds them below.
 *
 * @param plannedAt the moment from which the plan counts
 * @param from start of the day of the first work
 * @param to end of the day of the last work
 * @param days local days between them
 * @param swatches colour of each ink in use, {@code #rrggbb}
 * @param groups presses by the dryer that they feed
 * @param runs by start of the set-up
 * @param batches by start of their life
 * @param loads cabinet loads, by start
 */
public record PlanDrawing(
    OffsetDateTime plannedAt,
    OffsetDateTime from,
    OffsetDateTime to,
    List<LocalDate> days,
    Map<String, String> swatches,
    List<Group> groups,
    List<Run> runs,
    List<Batch> batches,
    List<Load> loads) {

  /** The drawing of a plan. */
  public static PlanDrawing of(PlanIndex plan) {
    return new DrawingMapping(plan).drawing();
  }

  /** A dryer, the presses that feed it, and how full it is. */
  public record Group(String dryer, List<PressHours> presses, List<BeltLoad> belt) {}

  /** A press with its staffed time. */
  public record PressHours(String press, boolean inService, List<StaffedHours.Stretch> staffed) {}

  /**
   * A stretch of constant load on a belt.
   *
   * @param areaPercent share of the belt's area in use
   * @param heatPercent share of the usable heat in use
   */
  public record BeltLoad(
      OffsetDateTime from,
      OffsetDateTime to,
      double speedMPerMin,
      int areaPercent,
      int heatPercent) {}

  /**
   * One run.
   *
   * @param name as people call it
   * @param rates stretches of printing; what lies between them is break
   * @param slackMinutes from the last garment off the belt until the order is due, minutes;
   *     negative when late, null when the order is unknown
   * @param lateMinutes how late the order ends, minutes; 0 when in time
   * @param frozen whether it was taken over unchanged from the plan before
   * @param waits why it did not start when the press was free
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Run(
      String id,
      String name,
      String order,
      String customer,
      String garments,
      String press,
      int lot,
      int lots,
      int quantity,
      OffsetDateTime setUpStart,
      OffsetDateTime printStart,
      OffsetDateTime printEnd,
      OffsetDateTime offBelt,
      List<Stretch> rates,
      int ratePerHour,
      String limitedBy,
      List<String> inks,
      List<String> batches,
      List<String> screens,
      OffsetDateTime dueAt,
      Long slackMinutes,
      long lateMinutes,
      boolean frozen,
      List<Wait> waits) {}

  /** A stretch of time. */
  public record Stretch(OffsetDateTime from, OffsetDateTime to) {}

  /** A stretch of waiting, its cause in words. */
  public record Wait(long minutes, String words) {}

  /**
   * One batch.
   *
   * @param from start of the activation, or of the mixing for ink without agent
   * @param readyAt earliest stroke
   * @param useBy latest stroke; null for ink without agent
   * @param lastUse last stroke that is planned; null when nobody draws from it
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Batch(
      String id,
      String ink,
      int totalG,
      boolean activated,
      boolean stock,
      OffsetDateTime from,
      OffsetDateTime readyAt,
      OffsetDateTime useBy,
      OffsetDateTime lastUse,
      List<String> runs) {}

  /** A load of a cabinet: what goes in together and comes out dry together. */
  public record Load(
      String cabinet,
      String step,
      OffsetDateTime from,
      OffsetDateTime to,
      int screens,
      List<String> runs) {}
}
