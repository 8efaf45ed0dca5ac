package org.potlife.web.room;

import java.time.LocalDate;
import java.util.List;
import org.potlife.plan.list.PressList.PressDay;
import org.potlife.plan.list.RunCard;

/**
 * One press's day.
 *
 * @param planId id of the plan in force; null when there is none
 * @param list its runs; null when there is no plan
 */
public record PressJobs(String planId, LocalDate day, String press, PressDay list) {

  public LocalDate dayBefore() {
    return day.minusDays(1);
  }

  public LocalDate dayAfter() {
    return day.plusDays(1);
  }

  /** The runs in order. */
  public List<RunCard> runs() {
    return list == null ? List.of() : list.runs();
  }

  /** A mark on a run. */
  public MarkButton mark(RunCard card, String type, String done) {
    return MarkButton.of(
        type,
        "press-" + press,
        card.run().order() + " " + card.run().design() + ", " + done,
        "run",
        card.run().id());
  }

  /** A name that may stand in a page as an id. */
  public String anchor(RunCard card) {
    return "r" + Integer.toHexString(card.run().id().hashCode());
  }
}
