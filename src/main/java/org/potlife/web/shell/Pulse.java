package org.potlife.web.shell;

import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.potlife.plan.PlanSummary;
import org.potlife.plan.Plans;
import org.potlife.platform.access.Roles;
import org.potlife.shop.Shops;

/** What a screen asks again and again to know whether it still shows what is. */
@Path("/plants/{plant}/pulse")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed(Roles.VIEWER)
public class Pulse {

  private final Shops shops;
  private final Plans plans;
  private final Clock clock;

  @Inject
  Pulse(Shops shops, Plans plans, Clock clock) {
    this.shops = shops;
    this.plans = plans;
    this.clock = clock;
  }

  /**
   * One beat.
   *
   * @param now the service's time
   * @param stamp counts the changes of orders, set-up and reports that make plans old
   * @param inForce id of the plan in force
   * @param stale whether it is older than the data
   * @param newest id of the plan that was asked for last
   * @param newestState its state
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Beat(
      Instant now, long stamp, String inForce, boolean stale, String newest, String newestState) {}

  @GET
  @Operation(hidden = true)
  public Beat beat(@PathParam("plant") String plant) {
    long stamp = shops.getShop(plant).dataStamp();
    PlanSummary inForce = plans.findCurrentSummary(plant).orElse(null);
    List<PlanSummary> newest = plans.listPlans(plant, 1);
    return new Beat(
        clock.instant(),
        stamp,
        inForce == null ? null : inForce.id(),
        inForce != null && inForce.stale(),
        newest.isEmpty() ? null : newest.get(0).id(),
        newest.isEmpty() ? null : newest.get(0).state().word());
  }
}
