package org.potlife.web;

import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.potlife.plan.PlanState;
import org.potlife.plan.Plans;
import org.potlife.plan.StoredPlan;
import org.potlife.plan.list.PlanIndex;
import org.potlife.platform.problem.ProblemException;
import org.potlife.platform.problem.Years;

/** Finds the plan that a sheet is of, and says in a page why there is none. */
@ApplicationScoped
class SheetDesk {

  private final Plans plans;
  private final Clock clock;

  @Inject
  SheetDesk(Plans plans, Clock clock) {
    this.plans = plans;
    this.clock = clock;
  }

  /** Fills one sheet. */
  interface Sheet {
    TemplateInstance fill(PageHead head, WallTime time, PlanIndex plan);
  }

  /** Fills a sheet of one thing on the plan; empty when the plan does not have it. */
  interface SheetOfOne {
    Optional<TemplateInstance> fill(PageHead head, PlanIndex plan);
  }

  /** A sheet of the plan's day, or of another. */
  Response page(String plant, String id, String day, Sheet sheet) {
    return page(
        plant,
        id,
        day,
        (head, plan) -> Optional.of(sheet.fill(head, new WallTime(plan.zone(), head.day()), plan)));
  }

  /** A sheet of one thing of the plan. */
  Response pageOfOne(String plant, String id, SheetOfOne sheet) {
    return page(plant, id, null, sheet);
  }

  private Response page(String plant, String id, String day, SheetOfOne sheet) {
    StoredPlan plan;
    LocalDate asked;
    try {
      plan = plans.getPlan(plant, id);
      asked = day == null ? plan.summary().day() : Years.day("day", day);
    } catch (ProblemException e) {
      return notice(e.problem().status(), e.problem().title(), e.problem().detail(), false);
    }
    if (plan.index().isEmpty()) {
      return notStanding(plan);
    }
    PlanIndex index = plan.index().get();
    PageHead head = PageHead.of(plan, index, asked, clock.instant());
    return sheet
        .fill(head, index)
        .map(page -> Response.ok(page).build())
        .orElseGet(
            () -> notice(404, "There is nothing here", "The plan does not have this.", false));
  }

  private static Response notStanding(StoredPlan plan) {
    return plan.summary().state() == PlanState.SOLVING
        ? notice(200, "The plan is being made", "This page looks again by itself.", true)
        : notice(200, "There is no plan", String.valueOf(plan.summary().failure()), false);
  }

  private static Response notice(int status, String title, String text, boolean again) {
    return Response.status(status)
        .type(MediaType.TEXT_HTML_TYPE)
        .entity(Pages.waiting(title, text, again, "/"))
        .build();
  }
}
