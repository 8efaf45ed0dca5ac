package org.potlife.plan.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.Temporal;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import org.potlife.plan.PlanFixture;
import org.potlife.plan.PlanOrigin;
import org.potlife.plan.PlanState;
import org.potlife.plan.PlanSummary;
import org.potlife.plan.SheetFixture;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.RunLine;

/** The feed of a press, read by another program: ical4j (org.mnode.ical4j) with its validation. */
class PressCalendarTest {

  private static final PlanSheet SHEET = SheetFixture.sheet();
  private static final OffsetDateTime PUBLISHED = PlanFixture.at(PlanFixture.DAY, "05:00");

  private static PlanSummary plan(int version) {
    return new PlanSummary(
        "yard-" + version,
        "yard",
        version,
        PlanState.PUBLISHED,
        PlanFixture.DAY,
        false,
        10,
        1,
        PUBLISHED,
        PUBLISHED,
        PUBLISHED,
        PUBLISHED,
        null,
        true,
        SHEET.score(),
        PlanOrigin.PLANNER,
        null,
        null,
        null);
  }

  private static Calendar read(String feed) throws Exception {
    Calendar calendar = new CalendarBuilder().build(new StringReader(feed));
    assertThat(calendar.validate().getEntries()).isEmpty();
    return calendar;
  }

  private static List<VEvent> events(String feed) throws Exception {
    return read(feed).getComponents("VEVENT");
  }

  private static List<RunLine> runsOn(String press) {
    return SHEET.runs().stream().filter(run -> run.press().equals(press)).toList();
  }

  private static Instant instant(Temporal time) {
    return time instanceof Instant moment ? moment : OffsetDateTime.from(time).toInstant();
  }

  private static String value(VEvent event, String name) {
    return event.<Property>getProperty(name).orElseThrow().getValue();
  }

  @Test
  void everyRunOfThePressIsAnEventFromItsSetUpToItsLastStroke() throws Exception {
    String press = SHEET.runs().get(0).press();
    List<RunLine> runs = runsOn(press);

    List<VEvent> events = events(PressCalendar.of(plan(7), SHEET, press));

    assertThat(events).hasSameSizeAs(runs);
    for (int i = 0; i < runs.size(); i++) {
      RunLine run = runs.get(i);
      VEvent event = events.get(i);
      assertThat(instant(event.getDateTimeStart().getDate()))
          .isEqualTo(run.setUpStart().toInstant());
      assertThat(instant(event.getDateTimeEnd().getDate())).isEqualTo(run.printEnd().toInstant());
      assertThat(value(event, "SUMMARY")).startsWith(run.order() + " " + run.design());
      assertThat(value(event, "DESCRIPTION"))
          .startsWith("Customer: " + run.customer() + "\n" + run.quantity() + " pieces");
      assertThat(value(event, "DTSTAMP"))
          .isEqualTo(
              PUBLISHED
                  .withOffsetSameInstant(ZoneOffset.UTC)
                  .format(java.time.format.DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'")));
    }
  }

  @Test
  void aRunKeepsItsNameInTheNextPlanAndItsNumberGrows() throws Exception {
    String press = SHEET.runs().get(0).press();

    List<VEvent> before = events(PressCalendar.of(plan(7), SHEET, press));
    List<VEvent> after = events(PressCalendar.of(plan(9), SHEET, press));

    assertThat(before).extracting(e -> value(e, "UID")).doesNotHaveDuplicates();
    assertThat(after)
        .extracting(e -> value(e, "UID"))
        .isEqualTo(before.stream().map(e -> value(e, "UID")).toList());
    assertThat(before).extracting(e -> value(e, "SEQUENCE")).containsOnly("7");
    assertThat(after).extracting(e -> value(e, "SEQUENCE")).containsOnly("9");
  }

  @Test
  void aPressWithoutARunSaysSo() throws Exception {
    Calendar calendar = read(PressCalendar.of(plan(7), SHEET, "idle"));

    assertThat(calendar.getComponents("VEVENT")).isEmpty();
    assertThat(calendar.getComponents("VJOURNAL")).hasSize(1);
  }

  @Test
  void whatACustomerIsCalledReadsAsItWasWritten() throws Exception {
    String name = "Müller; Söhne, \\ \"Färberei\" – Größe 50 % 𝔅 ".repeat(4).strip();
    RunLine run = SHEET.runs().get(0);
    PlanSheet odd = SheetFixture.sheet();
    PlanSheet sheet =
        new PlanSheet(
            odd.plannedAt(),
            odd.day(),
            odd.timeZone(),
            odd.horizonEnd(),
            odd.score(),
            List.of(calledAfter(run, name)),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of());

    String feed = PressCalendar.of(plan(7), sheet, run.press());

    assertThat(value(events(feed).get(0), "DESCRIPTION")).startsWith("Customer: " + name + "\n");
    assertThat(feed).endsWith("END:VCALENDAR\r\n");
    for (String line : feed.split("\r\n")) {
      // RFC 5545, 3.1
      assertThat(line.getBytes(StandardCharsets.UTF_8).length).as(line).isLessThanOrEqualTo(75);
      assertThat(line).doesNotContain("\n", "\uFFFD");
    }
  }

  private static RunLine calledAfter(RunLine r, String customer) {
    return new RunLine(
        r.id(),
        r.order(),
        customer,
        r.design(),
        r.position(),
        r.process(),
        r.lot(),
        r.lots(),
        r.press(),
        r.dryer(),
        r.quantity(),
        r.trialPieces(),
        r.setUpStart(),
        r.firstPieceAt(),
        r.printStart(),
        r.printEnd(),
        r.offBelt(),
        r.coolAt(),
        r.setUpMinutes(),
        r.screensToChange(),
        r.ratePerHour(),
        r.limitedBy(),
        r.rates(),
        r.screens(),
        r.inks(),
        r.batches(),
        r.waits());
  }
}
