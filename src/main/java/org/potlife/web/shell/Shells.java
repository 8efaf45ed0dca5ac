package org.potlife.web.shell;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.Cookie;
import jakarta.ws.rs.core.HttpHeaders;
import java.time.Clock;
import java.util.List;
import org.potlife.plan.PlanSummary;
import org.potlife.plan.Plans;
import org.potlife.platform.access.Caller;
import org.potlife.platform.problem.ProblemException;
import org.potlife.shop.Shops;
import org.potlife.shop.StoredShop;

/** Makes what stands around a screen. */
@ApplicationScoped
public class Shells {

  private final Shops shops;
  private final Plans plans;
  private final Caller caller;
  private final HttpHeaders headers;
  private final Clock clock;

  @Inject
  Shells(Shops shops, Plans plans, Caller caller, HttpHeaders headers, Clock clock) {
    this.shops = shops;
    this.plans = plans;
    this.caller = caller;
    this.headers = headers;
    this.clock = clock;
  }

  /**
   * The frame of a screen.
   *
   * @throws ProblemException 404 when there is no such plant
   */
  public Shell shell(String plant, Job job) {
    StoredShop shop = shops.getShop(plant);
    PlanSummary inForce = plans.findCurrentSummary(plant).orElse(null);
    return new Shell(
        plant,
        shop.shop().name(),
        job,
        plants(),
        shop.shop().timeZone(),
        manner(),
        clock.instant(),
        inForce);
  }

  /** How this device shows figures. */
  public Manner manner() {
    Cookie cookie = headers.getCookies().get(Manner.COOKIE);
    return Manner.of(cookie == null ? null : cookie.getValue());
  }

  /** Those that the caller may see. */
  private List<Shell.Plant> plants() {
    return shops.listPlants().stream()
        .filter(caller::maySee)
        .flatMap(id -> shops.findShop(id).stream())
        .map(shop -> new Shell.Plant(shop.plant(), shop.shop().name()))
        .toList();
  }
}
