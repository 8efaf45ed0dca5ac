package org.potlife.plan.export;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.potlife.plan.PlanSummary;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.RunLine;

/**
 * The runs of one press as an iCalendar feed (RFC 5545), for the calendars of crews and planners.
 *
 * <p>A run keeps its UID from plan to plan, and its SEQUENCE is the plan's version: a calendar that
 * reads the feed again moves what has moved. Times are in UTC, so that no time zone needs to be
 * described.
 */
public final class PressCalendar {

  private static final DateTimeFormatter WALL = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private PressCalendar() {}

  /**
   * The feed of a press.
   *
   * @param plan the plan in force
   */
  public static String of(PlanSummary plan, PlanSheet sheet, String press) {
    CalendarText text =
        new CalendarText()
            .line("BEGIN", "VCALENDAR")
            .line("VERSION", "2.0")
            .line("PRODID", "-//Potlife//Press calendar 1//EN")
            .line("CALSCALE", "GREGORIAN")
            // RFC 7986, 5.1 and 5.7
            .text("NAME", plan.plant() + " " + press)
            .line("REFRESH-INTERVAL;VALUE=DURATION", "PT15M");
    List<RunLine> runs = sheet.runs().stream().filter(run -> run.press().equals(press)).toList();
    for (RunLine run : runs) {
      event(text, plan, run, ZoneId.of(sheet.timeZone()));
    }
    if (runs.isEmpty()) {
      idle(text, plan, sheet, press);
    }
    return text.line("END", "VCALENDAR").toString();
  }

  private static void event(CalendarText text, PlanSummary plan, RunLine run, ZoneId zone) {
    Instant stamp = stamp(plan);
    text.line("BEGIN", "VEVENT")
        .text("UID", run.id() + "." + plan.plant() + "@potlife")
        .at("DTSTAMP", stamp)
        .at("LAST-MODIFIED", stamp)
        .line("SEQUENCE", String.valueOf(plan.version()))
        .at("DTSTART", run.setUpStart().toInstant())
        .at("DTEND", run.printEnd().toInstant())
        .text("SUMMARY", run.order() + " " + run.design() + ", " + run.position() + lot(run))
        .text("LOCATION", run.press())
        .text("CATEGORIES", run.process())
        .text("DESCRIPTION", description(plan, run, zone))
        .line("END", "VEVENT");
  }

  private static String lot(RunLine run) {
    return run.lots() == 1 ? "" : " (lot " + run.lot() + " of " + run.lots() + ")";
  }

  private static String description(PlanSummary plan, RunLine run, ZoneId zone) {
    return String.join(
        "\n",
        "Customer: " + run.customer(),
        run.quantity() + " pieces at " + run.ratePerHour() + " per hour",
        "Set-up from "
            + wall(run.setUpStart(), zone)
            + ", print from "
            + wall(run.printStart(), zone),
        "Off the belt at " + wall(run.offBelt(), zone),
        "Inks: " + String.join(", ", run.inks()),
        "Batches: " + String.join(", ", run.batches()),
        "Plan " + plan.id());
  }

  private static String wall(OffsetDateTime time, ZoneId zone) {
    return WALL.format(time.atZoneSameInstant(zone));
  }

  /** A calendar must have a component (3.6); that of an idle press is a note that it is idle. */
  private static void idle(CalendarText text, PlanSummary plan, PlanSheet sheet, String press) {
    text.line("BEGIN", "VJOURNAL")
        .text("UID", press + "." + plan.plant() + "@potlife")
        .at("DTSTAMP", stamp(plan))
        .line("SEQUENCE", String.valueOf(plan.version()))
        .at("DTSTART", sheet.plannedAt().toInstant())
        .text("SUMMARY", press + ": no runs in plan " + plan.id())
        .line("END", "VJOURNAL");
  }

  private static Instant stamp(PlanSummary plan) {
    return plan.publishedAt().toInstant();
  }
}
