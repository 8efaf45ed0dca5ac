package org.potlife.plan;

import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.EIGHT;
import static org.potlife.plan.PlanFixture.at;
import static org.potlife.plan.SheetFixture.CREST;
import static org.potlife.plan.SheetFixture.EVE;
import static org.potlife.plan.SheetFixture.LAMP;
import static org.potlife.plan.SheetFixture.LOAF1;
import static org.potlife.plan.SheetFixture.LOAF2;
import static org.potlife.plan.SheetFixture.NEXT;
import static org.potlife.plan.SheetFixture.ROSTER;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.sheet.PlanSheet.StepLine;

/** The screens of {@link SheetFixture}: eleven made, two kept. */
final class ScreenFixture {

  private ScreenFixture() {}

  static List<ScreenLine> screens() {
    List<ScreenLine> screens = new ArrayList<>();
    for (int i = 0; i < EIGHT.size(); i++) {
      screens.add(
          made(
              "crest/" + EIGHT.get(i), CREST, EIGHT.get(i), "crest", i + 1, EVE, "17:00", "06:00"));
    }
    screens.add(made("roster/brick", ROSTER, "brick", "roster", 1, DAY, "06:00", "08:30"));
    screens.add(made("lamp/bone", LAMP, "bone", "lamp", 1, DAY, "06:10", "10:40"));
    screens.add(made("lamp/brick", LAMP, "brick", "lamp", 2, DAY, "06:10", "10:40"));
    for (String ink : List.of("chalk", "soot")) {
      screens.add(
          new ScreenLine(
              "K-loaf-" + ink,
              LOAF1,
              List.of(LOAF1, LOAF2),
              ink,
              "loaf",
              ink.equals("chalk") ? 1 : 2,
              43,
              80,
              true,
              at(EVE, "16:30"),
              at(NEXT, "06:40"),
              List.of()));
    }
    return screens;
  }

  /** A screen through all stages; the latest start of each is an hour after the planned one. */
  private static ScreenLine made(
      String id,
      String run,
      String ink,
      String design,
      int station,
      LocalDate day,
      String start,
      String ready) {
    OffsetDateTime t = at(day, start);
    List<StepLine> steps = new ArrayList<>();
    boolean overnight = day.equals(EVE);
    OffsetDateTime morning = overnight ? at("04:30") : null;
    t = step(steps, "degrease", t, 5, "sink-" + (1 + station % 2));
    t = step(steps, "dry-degreased", t, 25, "C1");
    t = step(steps, "coat", t, 3, "bench-1");
    t = step(steps, "dry-coated", t, 60, station > 6 ? "C1" : "C2");
    t = step(steps, "expose", overnight ? morning : t, 3, "exposure-1");
    t = step(steps, "wash-out", t, 4, "booth-1");
    t = step(steps, "dry-washed", t, 30, "C1");
    t = step(steps, "post-expose", t, 2, "exposure-1");
    step(steps, "tape", t, 4, "table-1");
    return new ScreenLine(
        id, run, List.of(run), ink, design, station, 43, 80, false, at(ready), at("13:00"), steps);
  }

  private static OffsetDateTime step(
      List<StepLine> steps, String name, OffsetDateTime from, int minutes, String where) {
    OffsetDateTime to = from.plusMinutes(minutes);
    steps.add(new StepLine(name, from, to, from.plusHours(1), where));
    return to;
  }
}
