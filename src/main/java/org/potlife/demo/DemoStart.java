package org.potlife.demo;

import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.event.TransactionPhase;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.potlife.order.Order;
import org.potlife.order.Orders;
import org.potlife.plan.PlanChange;
import org.potlife.plan.PlanOrigin;
import org.potlife.plan.PlanWish;
import org.potlife.plan.Plans;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;

/**
 * Gives a newcomer something to look at: the first start on an empty database loads the demo plant
 * and plans its next working day. Turned off with {@code POTLIFE_DEMO=false}.
 */
@ApplicationScoped
class DemoStart {

  private static final Logger LOG = Logger.getLogger(DemoStart.class);

  /** After the job library has started. */
  private static final int LATE = 4000;

  private final Shops shops;
  private final Orders orders;
  private final Plans plans;
  private final Clock clock;
  private final boolean wanted;
  private final String address;

  @Inject
  DemoStart(
      Shops shops,
      Orders orders,
      Plans plans,
      Clock clock,
      @ConfigProperty(name = "potlife.demo", defaultValue = "true") boolean wanted,
      @ConfigProperty(name = "quarkus.http.host") String host,
      @ConfigProperty(name = "quarkus.http.port") int port) {
    this.shops = shops;
    this.orders = orders;
    this.plans = plans;
    this.clock = clock;
    this.wanted = wanted;
    this.address = "http://" + (host.equals("0.0.0.0") ? "127.0.0.1" : host) + ":" + port + "/";
  }

  @Transactional
  void load(@Observes @Priority(LATE) StartupEvent event) {
    if (!wanted || !shops.listPlants().isEmpty()) {
      return;
    }
    Shop shop = DemoPlant.shop();
    if (shops.createShop(DemoPlant.ID, shop).isEmpty()) {
      // another replica on the same database was faster
      return;
    }
    shops.lockShop(DemoPlant.ID);
    LocalDate tomorrow = LocalDate.ofInstant(clock.instant(), shop.timeZone()).plusDays(1);
    int count = 0;
    for (Order order : DemoPlant.orders(tomorrow)) {
      orders.put(DemoPlant.ID, order, version -> {});
      count++;
    }
    LocalDate day = nextWorkingDay(shop, tomorrow);
    plans.request(
        DemoPlant.ID,
        new PlanWish(
            day, PlanWish.DEFAULT_SOLVE_SECONDS, PlanWish.DEFAULT_SEED, PlanOrigin.PLANNER, true));
    LOG.infof("Demo plant loaded with %d orders; %s is being planned", count, day);
  }

  void tell(@Observes(during = TransactionPhase.AFTER_SUCCESS) PlanChange change) {
    if (change.plant().equals(DemoPlant.ID)
        && change.version() == 1
        && change.kind() == PlanChange.Kind.PUBLISHED) {
      LOG.infof("The demo plant's first plan is in force: open %s", address);
    }
  }

  /** The first day from this one on on which a press is staffed without overtime. */
  static LocalDate nextWorkingDay(Shop shop, LocalDate from) {
    for (int i = 0; i < DayOfWeek.values().length; i++) {
      DayOfWeek day = from.plusDays(i).getDayOfWeek();
      boolean staffed =
          shop.presses().stream()
              .flatMap(press -> press.shifts().stream())
              .anyMatch(shift -> !shift.overtime() && shift.days().contains(day));
      if (staffed) {
        return from.plusDays(i);
      }
    }
    return from;
  }
}
