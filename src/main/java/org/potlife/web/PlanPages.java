package org.potlife.web;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.potlife.plan.list.ActivationList;
import org.potlife.plan.list.BeltList;
import org.potlife.plan.list.LateList;
import org.potlife.plan.list.PlanOverview;
import org.potlife.plan.list.PressList;
import org.potlife.plan.list.ScreenList;
import org.potlife.platform.access.Roles;

/** The sheets of a plan; {@code current} stands for the plan in force. */
@Path("/plants/{plant}/plans/{id}/pages")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed(Roles.VIEWER)
public class PlanPages {

  private final SheetDesk desk;

  @Inject
  PlanPages(SheetDesk desk) {
    this.desk = desk;
  }

  @GET
  @Path("plan")
  @Operation(hidden = true)
  public Response plan(
      @PathParam("plant") String plant, @PathParam("id") String id, @QueryParam("day") String day) {
    return desk.page(
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
    return desk.page(
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
    return desk.page(
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
    return desk.page(
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
    return desk.page(
        plant,
        id,
        day,
        (head, time, plan) -> Pages.belts(head, time, BeltList.of(plan, head.day())));
  }

  @GET
  @Path("late")
  @Operation(hidden = true)
  public Response late(@PathParam("plant") String plant, @PathParam("id") String id) {
    return desk.page(
        plant, id, null, (head, time, plan) -> Pages.late(head, time, LateList.of(plan)));
  }
}
