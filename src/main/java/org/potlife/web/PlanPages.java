package org.potlife.web;

import io.quarkus.qute.TemplateInstance;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.potlife.plan.PlanState;
import org.potlife.plan.Plans;
import org.potlife.plan.StoredPlan;
import org.potlife.plan.list.ActivationList;
import org.potlife.plan.list.BeltList;
import org.potlife.plan.list.LateList;
import org.potlife.plan.list.PlanIndex;
import org.potlife.plan.list.PlanOverview;
import org.potlife.plan.list.PressList;
import org.potlife.plan.list.ScreenList;
import org.potlife.platform.problem.ProblemException;

/** The sheets of a plan; {@code current} stands for the plan in force. */
@Path("/plants/{plant}/plans/{id}/pages")
@Produces(MediaType.TEXT_HTML)
public class PlanPages {

  private final Plans plans;
  private final Clock clock;

  @Inject
  PlanPages(Plans plans, Clock clock) {
    this.plans = plans;
    this.clock = clock;
  }

  @GET
  @Path("plan")
  @Operation(hidden = true)
  public Response plan(
      @PathParam("plant") String plant, @PathParam("id") String id, @QueryParam("day") String day) {
    return page(
        plant,
        id,
        day,
        (head, time, plan) ->
            Pages.plan(head, time, PlanOverview.of(plan), PressList.of(plan, head.day())));
  }

  @GET
  @Path("activations")
  @Operation(hidden = true)
  public Response activations(
      @PathParam("plant") String plant, @PathParam("id") String id, @QueryParam("day") String day) {
    return page(
        plant,
        id,
        day,
        (head, time, plan) -> Pages.activations(head, time, ActivationList.of(plan, head.day())));
  }

  @GET
  @Path("screens")
  @Operation(hidden = true)
  public Response screens(
      @PathParam("plant") String plant, @PathParam("id") String id, @QueryParam("day") String day) {
    return page(
        plant,
        id,
        day,
        (head, time, plan) -> Pages.screens(head, time, ScreenList.of(plan, head.day())));
  }

  @GET
  @Path("presses")
  @Operation(hidden = true)
  public Response presses(
      @PathParam("plant") String plant, @PathParam("id") String id, @QueryParam("day") String day) {
    return page(
        plant,
        id,
        day,
        (head, time, plan) -> Pages.presses(head, time, PressList.of(plan, head.day())));
  }

  @GET
  @Path("belts")
  @Operation(hidden = true)
  public Response belts(
      @PathParam("plant") String plant, @PathParam("id") String id, @QueryParam("day") String day) {
    return page(
        plant,
        id,
        day,
        (head, time, plan) -> Pages.belts(head, time, BeltList.of(plan, head.day())));
  }

  @GET
  @Path("late")
  @Operation(hidden = true)
  public Response late(@PathParam("plant") String plant, @PathParam("id") String id) {
    return page(plant, id, null, (head, time, plan) -> Pages.late(head, time, LateList.of(plan)));
  }

  /** Fills one sheet. */
  private interface Sheet {
    TemplateInstance fill(PageHead head, WallTime time, PlanIndex plan);
  }

  private Response page(String plant, String id, String day, Sheet sheet) {
    StoredPlan plan;
    LocalDate asked;
    try {
      plan = plans.getPlan(plant, id);
      asked = day == null ? plan.summary().day() : LocalDate.parse(day);
    } catch (ProblemException e) {
      return notice(e.problem().status(), e.problem().title(), e.problem().detail(), false);
    } catch (DateTimeException e) {
      return notice(400, "Which day?", "The day must be a date like 2026-12-01.", false);
    }
    if (plan.index().isEmpty()) {
      return notStanding(plan);
    }
    PlanIndex index = plan.index().get();
    PageHead head = PageHead.of(plan, index, asked, clock.instant());
    return Response.ok(sheet.fill(head, new WallTime(index.zone(), asked), index)).build();
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
