package org.potlife.plan.internal;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.potlife.plan.PlanSummary;
import org.potlife.plan.Plans;
import org.potlife.plan.StoredPlan;
import org.potlife.plan.export.PressCalendar;
import org.potlife.platform.access.Roles;
import org.potlife.platform.http.Preconditions;
import org.potlife.platform.problem.ProblemException;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;

/** The plan in force as calendars, one per press. */
@Path("/api/v1/plants/{plant}/presses/{press}/calendar.ics")
@Tag(name = "lists")
@RolesAllowed({Roles.VIEWER, Roles.ERP})
public class CalendarResource {

  private static final String CALENDAR = "text/calendar";

  private final Shops shops;
  private final Plans plans;

  @Inject
  CalendarResource(Shops shops, Plans plans) {
    this.shops = shops;
    this.plans = plans;
  }

  @GET
  @Produces(CALENDAR)
  @Operation(summary = "The runs of a press in the plan in force, as an iCalendar feed")
  @APIResponse(responseCode = "200", description = "RFC 5545; runs keep their UID between plans")
  @APIResponse(responseCode = "304", description = "No other plan has come into force")
  @APIResponse(responseCode = "404", description = "No such press, or no plan in force")
  public Response calendar(
      @PathParam("plant") String plant,
      @PathParam("press") String press,
      @Context HttpHeaders headers) {
    Shop shop = shops.getShop(plant).shop();
    if (shop.presses().stream().noneMatch(p -> p.id().equals(press))) {
      throw ProblemException.notFound("The plant has no press of this name.");
    }
    StoredPlan plan = plans.getPlan(plant, "current");
    PlanSummary summary = plan.summary();
    String tag = Preconditions.tag(summary.version());
    if (Preconditions.of(headers).alreadyRead(summary.version())) {
      return Response.notModified().header(HttpHeaders.ETAG, tag).build();
    }
    return Response.ok(PressCalendar.of(summary, plan.sheet().orElseThrow(), press))
        .type(CALENDAR + ";charset=utf-8")
        .header(HttpHeaders.ETAG, tag)
        .header(HttpHeaders.CACHE_CONTROL, "no-cache")
        .build();
  }
}
