package org.potlife.web;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Clock;
import java.time.LocalDate;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.potlife.plan.Plans;
import org.potlife.plan.StoredPlan;
import org.potlife.plan.list.LateList;
import org.potlife.plan.list.PlanIndex;
import org.potlife.plan.list.PressList;
import org.potlife.platform.access.Roles;
import org.potlife.shop.Shops;
import org.potlife.shop.StoredShop;

/** The way in: each plant with the plan in force and tomorrow's runs. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed(Roles.VIEWER)
public class StartPage {

  /** How many of a plant's latest plans are shown. */
  private static final int RECENT = 5;

  private final Shops shops;
  private final Plans plans;
  private final Clock clock;

  @Inject
  StartPage(Shops shops, Plans plans, Clock clock) {
    this.shops = shops;
    this.plans = plans;
    this.clock = clock;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance start() {
    return Pages.start(
        new StartView(
            shops.listPlants().stream()
                .flatMap(plant -> shops.findShop(plant).stream())
                .map(this::plant)
                .toList()));
  }

  private StartView.Plant plant(StoredShop shop) {
    LocalDate tomorrow = LocalDate.ofInstant(clock.instant(), shop.shop().timeZone()).plusDays(1);
    StartView.Planned planned =
        plans.findCurrent(shop.plant()).map(plan -> planned(plan, tomorrow)).orElse(null);
    return new StartView.Plant(
        shop.plant(), shop.shop().name(), tomorrow, planned, plans.listPlans(shop.plant(), RECENT));
  }

  private StartView.Planned planned(StoredPlan plan, LocalDate tomorrow) {
    PlanIndex index = plan.index().orElseThrow();
    return new StartView.Planned(
        PageHead.of(plan, index, plan.summary().day(), clock.instant()),
        new WallTime(index.zone(), tomorrow),
        PressList.of(index, tomorrow),
        LateList.of(index));
  }
}
