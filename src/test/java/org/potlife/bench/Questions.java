package org.potlife.bench;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import org.potlife.planning.PlanRequest;
import org.potlife.planning.SolveWatch;
import org.potlife.planning.WhatIf;
import org.potlife.planning.WhatIf.DueAt;
import org.potlife.planning.WhatIf.FurtherShift;
import org.potlife.planning.WhatIf.PressDown;
import org.potlife.planning.WhatIf.Question;
import org.potlife.sheet.PlanSheet;
import org.potlife.shop.Shift;

/** How long a question to the plan in force takes, from the request to the two sheets. */
final class Questions {

  private Questions() {}

  static void measure(Settings settings, Report report) {
    int seconds = (int) settings.seconds("seconds", 1);
    Table table =
        new Table(
            "Questions to the plan in force, s from the request to the answer",
            "runs",
            "instance",
            "due sooner",
            "press down",
            "further shift",
            "of these search");
    for (int size : settings.sizes(150)) {
      for (int instance = 1; instance <= settings.instances(); instance++) {
        PlanRequest first = BenchPlant.request(size, instance, 5);
        PlanSheet inForce = settings.planner().solve(first, SolveWatch.none());
        PlanRequest request = anHourLater(first, inForce, seconds);
        table.add(
            size,
            instance,
            answered(settings, request, dueSooner(request)),
            answered(settings, request, pressDown(inForce)),
            answered(settings, request, furtherShift()),
            seconds);
        report.say(table.markdown());
      }
    }
    report.table("questions", table);
  }

  private static PlanRequest anHourLater(PlanRequest first, PlanSheet inForce, int seconds) {
    return new PlanRequest(
        first.shop(),
        first.orders(),
        first.day(),
        first.plannedAt().plus(Duration.ofHours(1)),
        Optional.of(inForce),
        seconds,
        first.seed());
  }

  private static Question dueSooner(PlanRequest request) {
    var order = request.orders().get(request.orders().size() / 2);
    return new DueAt(order.reference(), order.dueAt().minusDays(1));
  }

  private static Question pressDown(PlanSheet inForce) {
    OffsetDateTime from = inForce.runs().get(inForce.runs().size() / 3).setUpStart();
    return new PressDown("P1", from, from.plusHours(4));
  }

  private static Question furtherShift() {
    return new FurtherShift(
        "P1",
        new Shift(
            List.of(DayOfWeek.SATURDAY), LocalTime.of(6, 0), LocalTime.of(14, 0), null, true));
  }

  private static double answered(Settings settings, PlanRequest request, Question question) {
    LongSupplier clock = settings.clock();
    long begun = clock.getAsLong();
    WhatIf.of(settings.planner(), request, question);
    return (clock.getAsLong() - begun) / 1e9;
  }
}
