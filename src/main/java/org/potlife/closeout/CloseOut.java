package org.potlife.closeout;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;

/**
 * A day's close-out.
 *
 * @param closedAt the moment up to which it knows
 * @param runs runs of the day: those told of, and those planned of which nothing is told
 * @param presses figures per press
 * @param total the presses taken together
 * @param carryOver what was planned for the day and is not printed
 */
public record CloseOut(
    String plant,
    LocalDate day,
    OffsetDateTime closedAt,
    List<RunResult> runs,
    List<PressFigures> presses,
    PressFigures total,
    Promises promises,
    InkLoss inkLoss,
    List<CarriedOver> carryOver) {

  /**
   * Plan against actual of one run. Differences are actual less planned.
   *
   * @param state ended, running or not-told
   * @param printStart as told, else reckoned from the start by the planned set-up
   * @param end told end, else the last count
   * @param ratePerHour pieces after the set-up per hour of printing; null before there are any
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record RunResult(
      String run,
      String order,
      String design,
      String position,
      int lot,
      String press,
      String state,
      OffsetDateTime plannedStart,
      OffsetDateTime plannedEnd,
      int plannedPieces,
      int plannedRatePerHour,
      OffsetDateTime start,
      OffsetDateTime printStart,
      OffsetDateTime end,
      Integer good,
      Integer spoiled,
      Double ratePerHour,
      Long startMinutesLate,
      Long endMinutesLate) {}

  /**
   * On time in full, counted per order that was due on the day.
   *
   * @param share null when none was due
   * @param missed those that were not, with why
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Promises(int due, int onTimeInFull, Double share, List<Missed> missed) {}

  /**
   * An order due on the day that was not on time in full.
   *
   * @param good good pieces at the close-out
   */
  public record Missed(String order, OffsetDateTime dueAt, int quantity, int good, String why) {}

  /**
   * Ink that came to nothing.
   *
   * @param lostG discarded, unaccounted for, or past its pot life, g
   * @param cost in the plant's currency
   */
  public record InkLoss(int lostG, double cost, String currency, List<OfInk> inks) {

    /**
     * Of one ink.
     *
     * @param discardedG thrown away, g
     * @param unaccountedG missing when the container was empty, g
     * @param pastPotLifeG left in a batch whose pot life is over, g
     * @param cost of all three, in the plant's currency
     */
    public record OfInk(
        String ink, int discardedG, int unaccountedG, int pastPotLifeG, double cost) {

      /** All that came to nothing, g. */
      public int allG() {
        return discardedG + unaccountedG + pastPotLifeG;
      }

      /** What so many of its grams cost. */
      public double costOf(int grams) {
        return allG() == 0 ? 0 : cost * grams / allG();
      }
    }
  }

  /** What is carried over into the next day. */
  public record CarriedOver(String run, String order, String design, String position, int pieces) {}
}
