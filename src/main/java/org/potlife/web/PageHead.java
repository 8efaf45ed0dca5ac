package org.potlife.web;

import java.time.Instant;
import java.time.LocalDate;
import org.potlife.plan.PlanSummary;
import org.potlife.plan.StoredPlan;
import org.potlife.plan.list.PlanIndex;

/**
 * What stands at the head of every sheet, so that nobody works from the wrong one.
 *
 * @param plant id of the plant, as in the address
 * @param plantName what people call it
 * @param plan id of the plan
 * @param version counts the plans of the plant
 * @param state draft, published or superseded
 * @param stale whether orders or shop have changed since the plan was asked for
 * @param planDay the day that the plan was asked for
 * @param day the day of this sheet
 * @param printedAt when the sheet was made
 */
public record PageHead(
    String plant,
    String plantName,
    String plan,
    int version,
    String state,
    boolean stale,
    LocalDate planDay,
    LocalDate day,
    Instant printedAt) {

  static PageHead of(StoredPlan plan, PlanIndex index, LocalDate day, Instant printedAt) {
    PlanSummary summary = plan.summary();
    return new PageHead(
        summary.plant(),
        index.shop().name(),
        summary.id(),
        summary.version(),
        summary.state().word(),
        summary.stale(),
        summary.day(),
        day,
        printedAt);
  }

  /** The same head for the sheet of another day. */
  PageHead on(LocalDate otherDay) {
    return new PageHead(
        plant, plantName, plan, version, state, stale, planDay, otherDay, printedAt);
  }

  /** Address of the plan's pages, with a slash at its end. */
  public String pages() {
    return "/plants/" + plant + "/plans/" + plan + "/pages/";
  }

  /** Address of the plan in the REST interface. */
  public String api() {
    return "/api/v1/plants/" + plant + "/plans/" + plan;
  }

  /** Why nobody should work from this sheet; empty when it is in force. */
  public String warning() {
    return switch (state) {
      case "published" ->
          stale
              ? "Orders or shop have changed since this plan was made: a new one may follow."
              : "";
      case "superseded" -> "Superseded: a newer plan is in force. Take this sheet off the wall.";
      case "draft" -> "Draft: not published, may still change. Do not work from this sheet.";
      default -> "Not finished (" + state + ").";
    };
  }

  public LocalDate dayBefore() {
    return day.minusDays(1);
  }

  public LocalDate dayAfter() {
    return day.plusDays(1);
  }
}
