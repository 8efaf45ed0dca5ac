package org.potlife.plan.list;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;

/**
 * The ink room's list of one local day: every batch that is mixed or activated on it, in working
 * order. Inks without agent are on it too; they have no clock.
 *
 * @param agentG agent for all batches of the list, g
 * @param cutting what the day's activated batches lose, against rules of thumb; empty on a day
 *     without agent
 * @param cautions what to keep in mind; empty on a day without agent
 */
public record ActivationList(
    LocalDate day, int agentG, List<Batch> batches, List<Cutting> cutting, List<String> cautions) {

  /** The list of a day. */
  public static ActivationList of(PlanIndex plan, LocalDate day) {
    return new ActivationMapping(plan).list(day);
  }

  /**
   * One batch.
   *
   * @param ink the ink with its swatch
   * @param system id of the ink's system
   * @param massG mass without agent, g
   * @param agentG agent on top, g
   * @param agentPercent agent as percent of the mass
   * @param retarderG the retarder among the components, g
   * @param totalG mass with agent, g
   * @param components what goes onto the scale, in this order; the agent is not among them, it is
   *     stirred in later
   * @param mixFrom start of weighing
   * @param activateFrom start of stirring in the agent; null for inks without agent
   * @param activatedAt end of stirring, when the clock starts; null for inks without agent
   * @param readyAt earliest stroke
   * @param useBy latest stroke; null for inks without agent
   * @param mixer number of the mixer, from 1
   * @param reserveG part of the mass that no run asks for, g
   * @param uses runs that draw from it, in order
   * @param stock whether it stands on the shelf and only has to be fetched
   * @param lightOnly whether it once had agent and is for light garments alone
   * @param recipeVersion version of the recipe that it is weighed by; null when unknown
   * @param warnings what to look at twice; empty when there is nothing
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Batch(
      String id,
      @JsonUnwrapped InkChip ink,
      String system,
      String process,
      int massG,
      int agentG,
      double agentPercent,
      int retarderG,
      int totalG,
      List<Weighing> components,
      OffsetDateTime mixFrom,
      OffsetDateTime activateFrom,
      OffsetDateTime activatedAt,
      OffsetDateTime readyAt,
      OffsetDateTime useBy,
      int mixer,
      int reserveG,
      List<Use> uses,
      boolean stock,
      boolean lightOnly,
      Integer recipeVersion,
      List<String> warnings) {

    /** Ids of the runs that draw from it, in order. */
    @JsonProperty("runs")
    public List<String> runs() {
      return uses.stream().map(Use::run).distinct().toList();
    }

    /** Whether a clock runs on this batch. */
    public boolean activated() {
      return agentG > 0;
    }
  }

  /**
   * One component on the scale.
   *
   * @param massG its mass, g
   * @param scaleG what the scale shows when it is in, if it is not zeroed in between, g
   */
  public record Weighing(String name, String role, int massG, int scaleG) {}

  /**
   * What one run draws from a batch.
   *
   * @param garments style and colour of the garments
   * @param pieces pieces of the whole run, trial pieces included
   * @param from first stroke with this batch
   * @param to last stroke with this batch
   * @param massG ink drawn, screen charge included, g
   * @param printG the part of it that goes onto garments, handling loss included, g
   * @param chargeG the part of it that stays on the screens, g
   * @param lossPercent handling loss within {@code printG}, percent of what is printed
   * @param perPiece what one piece takes of this ink, station by station
   */
  public record Use(
      String run,
      String press,
      String order,
      String customer,
      String design,
      String position,
      String garments,
      int pieces,
      OffsetDateTime from,
      OffsetDateTime to,
      int massG,
      int printG,
      int chargeG,
      double lossPercent,
      List<PerPiece> perPiece) {}

  /**
   * One way to cut the day's need into batches.
   *
   * @param rule {@code plan}: the batches of this plan; {@code batch-per-run}: every run has its
   *     own; {@code batch-per-ink}: one for all runs of an ink, split where pot life or container
   *     force it; {@code whole-day-at-once}: all of an ink is activated for its first use, and what
   *     outlives its pot life is thrown away and made anew
   * @param batches how many are made
   * @param massG their mass without agent, g
   * @param lostG the part of it that no garment gets: reserve, rounding, screens, dead ink, g
   */
  public record Cutting(String rule, int batches, long massG, long lostG) {}
}
