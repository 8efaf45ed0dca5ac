package org.potlife.sheet;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;

/**
 * A finished plan as written down for people, the ERP and the audit: every time is an instant with
 * the plant's offset, every mass whole grams. Lists are in working order.
 *
 * @param plannedAt the moment from which the plan counts; no work of it lies before
 * @param day the local day that the plan was asked for
 * @param horizonEnd end of the time that the plan may use
 * @param frozen ids of runs that were taken over unchanged from the published plan
 */
public record PlanSheet(
    OffsetDateTime plannedAt,
    LocalDate day,
    String timeZone,
    OffsetDateTime horizonEnd,
    PlanScore score,
    List<RunLine> runs,
    List<BatchLine> batches,
    List<ScreenLine> screens,
    List<BeltLine> belts,
    List<LateLine> late,
    List<UnplacedLine> unplaced,
    List<String> frozen) {

  /**
   * What the plan is worth.
   *
   * @param unplaced runs without a place
   * @param weightedLateMinutes late minutes times the weight of the order's priority, summed
   * @param lateMinutes late minutes, summed over orders
   * @param totalCost sum of {@code cost}, plant currency
   * @param cost cost by kind, plant currency
   */
  public record PlanScore(
      int unplaced,
      long weightedLateMinutes,
      long lateMinutes,
      double totalCost,
      Map<String, Double> cost) {}

  /**
   * One run.
   *
   * @param id stable name: order, design, position and lot
   * @param lot number of the lot, from 1
   * @param lots number of lots of this print
   * @param quantity pieces printed in all, spoilage allowance and trial pieces included
   * @param trialPieces pieces of the quantity that are printed for approval during the set-up
   * @param setUpStart start of the set-up
   * @param firstPieceAt when the first piece is printed; garments, ink and dryer are needed from
   *     here on; equals printStart when there is no set-up
   * @param printStart end of the set-up, start of production
   * @param printEnd last stroke
   * @param offBelt last garment off the belt, for sure
   * @param coolAt when its garments may be printed again
   * @param setUpMinutes length of the set-up in staffed minutes
   * @param screensToChange screens that differ from the run before
   * @param ratePerHour mean rate over the printing time without breaks, pieces/h
   * @param limitedBy press or dryer
   * @param rates rate over time; gaps are breaks
   * @param screens ids of the screens by station
   * @param inks ids of the inks by station
   * @param batches ids of the batches it draws from
   * @param waits why it did not start when the press was free, in order; the minutes add up to the
   *     time between the press being free and setUpStart
   */
  public record RunLine(
      String id,
      String order,
      String customer,
      String design,
      String position,
      String process,
      int lot,
      int lots,
      String press,
      String dryer,
      int quantity,
      int trialPieces,
      OffsetDateTime setUpStart,
      OffsetDateTime firstPieceAt,
      OffsetDateTime printStart,
      OffsetDateTime printEnd,
      OffsetDateTime offBelt,
      OffsetDateTime coolAt,
      int setUpMinutes,
      int screensToChange,
      int ratePerHour,
      String limitedBy,
      List<RateLine> rates,
      List<String> screens,
      List<String> inks,
      List<String> batches,
      List<WaitLine> waits) {

    /** What people call it: order, design, position, and the lot if there are several. */
    public String words() {
      return order + " " + design + ", " + position + (lots > 1 ? ", lot " + lot : "");
    }
  }

  /** A constant rate over a stretch of printing. */
  public record RateLine(OffsetDateTime from, OffsetDateTime to, int ratePerHour) {}

  /**
   * A stretch of waiting with its one cause.
   *
   * @param cause closed, garments, same-garments, screens, same-screens, ink-room, dryer
   * @param minutes length, minutes, rounded
   * @param behind what it waits for, or null
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record WaitLine(String cause, long minutes, String behind) {}

  /**
   * One batch of one ink.
   *
   * @param massG mass without agent, g; equals the sum of the components
   * @param components components in weighing order, retarder included
   * @param agentG agent on top, g; 0 for inks without agent
   * @param agentPercent agent as percent of the mass
   * @param retarderG the retarder among the components, g
   * @param mixFrom start of weighing
   * @param activateFrom start of stirring in the agent; for inks without agent equals activatedAt
   * @param activatedAt end of the activation (the clock starts), or of the mixing
   * @param readyAt earliest stroke
   * @param mixer number of the mixer, from 1
   * @param useBy latest stroke; null for inks without agent
   * @param reserveG part of the mass that is reserve or rounding, g
   * @param runs ids of the runs served, in order
   * @param uses what each run draws
   * @param origin null for a batch that is made; {@code stock} for a container that stood on the
   *     shelf: it has no components, is not mixed, and its times say since when it is there
   * @param recipeVersion version of the ink's recipe that it is weighed by; null when unknown
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record BatchLine(
      String id,
      String ink,
      String process,
      int massG,
      List<ComponentLine> components,
      int agentG,
      double agentPercent,
      int retarderG,
      OffsetDateTime mixFrom,
      OffsetDateTime activateFrom,
      OffsetDateTime activatedAt,
      OffsetDateTime readyAt,
      OffsetDateTime useBy,
      int mixer,
      int reserveG,
      List<String> runs,
      List<UseLine> uses,
      String origin,
      Integer recipeVersion) {

    /** Value of {@code origin} for a container that stood on the shelf. */
    public static final String STOCK = "stock";

    /** Whether it stood on the shelf and is not made. */
    public boolean fromStock() {
      return STOCK.equals(origin);
    }

    /** The same batch with another clock. */
    public BatchLine activated(
        OffsetDateTime mixed,
        OffsetDateTime from,
        OffsetDateTime at,
        OffsetDateTime ready,
        OffsetDateTime lastStroke) {
      return new BatchLine(
          id,
          ink,
          process,
          massG,
          components,
          agentG,
          agentPercent,
          retarderG,
          mixed,
          from,
          at,
          ready,
          lastStroke,
          mixer,
          reserveG,
          runs,
          uses,
          origin,
          recipeVersion);
    }

    /** The same batch with other uses; what they leave is reserve. */
    public BatchLine used(List<String> byRuns, List<UseLine> by) {
      int drawn = by.stream().mapToInt(use -> use.printG() + use.chargeG()).sum();
      return new BatchLine(
          id,
          ink,
          process,
          massG,
          components,
          agentG,
          agentPercent,
          retarderG,
          mixFrom,
          activateFrom,
          activatedAt,
          readyAt,
          useBy,
          mixer,
          massG - drawn,
          byRuns,
          by,
          origin,
          recipeVersion);
    }
  }

  /** Mass of one component of a batch, g. */
  public record ComponentLine(String name, String role, int massG) {}

  /**
   * What one run draws from one batch.
   *
   * @param from first stroke with this batch
   * @param to last stroke with this batch
   * @param printG ink that goes onto garments, handling loss included, g
   * @param chargeG ink that stays on the screens, g
   */
  public record UseLine(
      String run, OffsetDateTime from, OffsetDateTime to, int printG, int chargeG) {}

  /**
   * One screen.
   *
   * @param run first run that uses it
   * @param runs all runs that use it, in order
   * @param station station on the press of the first run, from 1
   * @param kept whether it is a kept stencil, which needs no work
   * @param readyAt taped and checked
   */
  public record ScreenLine(
      String id,
      String run,
      List<String> runs,
      String ink,
      String design,
      int station,
      double meshPerCm,
      double threadUm,
      boolean kept,
      OffsetDateTime readyAt,
      OffsetDateTime releasedAt,
      List<StepLine> steps) {}

  /**
   * One stage of one screen.
   *
   * @param step degrease, dry-degreased, coat, dry-coated, expose, wash-out, dry-washed,
   *     post-expose, tape
   * @param latestFrom latest start that still meets the run, other screens aside
   * @param where the place: sink-1, bench-1, a cabinet's id, exposure-1, booth-1, table-1
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record StepLine(
      String step,
      OffsetDateTime from,
      OffsetDateTime to,
      OffsetDateTime latestFrom,
      String where) {

    /** Whether it happens in a cabinet, day and night. */
    public boolean drying() {
      return step.startsWith("dry-");
    }
  }

  /**
   * A belt over a period with constant settings.
   *
   * @param dwellS dwell in the heated length at this speed, seconds
   * @param areaPercent share of the belt's area in use
   * @param heatPercent share of the usable heat in use
   * @param runs runs in the tunnel
   * @param bound what binds: dwell, area, heat or none
   */
  public record BeltLine(
      String dryer,
      OffsetDateTime from,
      OffsetDateTime to,
      double speedMPerMin,
      int dwellS,
      int areaPercent,
      int heatPercent,
      List<String> runs,
      String bound) {}

  /** An order that ends after its due date. */
  public record LateLine(
      String order,
      String customer,
      OffsetDateTime dueAt,
      OffsetDateTime plannedFinish,
      long minutes,
      long weightedMinutes,
      String cause) {}

  /** A print that has no place, with the rule that stands in the way and the cause in words. */
  public record UnplacedLine(
      String order, String design, String position, int lot, String rule, String cause) {}
}
