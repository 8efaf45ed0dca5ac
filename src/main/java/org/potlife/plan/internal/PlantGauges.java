package org.potlife.plan.internal;

import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.MultiGauge;
import io.micrometer.core.instrument.MultiGauge.Row;
import io.micrometer.core.instrument.Tags;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.event.TransactionPhase;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.ToDoubleFunction;
import org.jboss.logging.Logger;
import org.potlife.order.Orders;
import org.potlife.plan.PlanChange;
import org.potlife.plan.Plans;
import org.potlife.plan.list.InkFigures;
import org.potlife.shop.Shops;
import org.potlife.shop.StoredShop;

/**
 * Figures of each plant: its open orders, and what the plan in force makes of them. Read again
 * every few seconds, the documents only when they have changed.
 */
@ApplicationScoped
class PlantGauges {

  private static final Logger LOG = Logger.getLogger(PlantGauges.class);
  private static final long EVERY_S = 15;

  private final MeterRegistry registry;
  private final Shops shops;
  private final Orders orders;
  private final Plans plans;
  private final Map<String, Figures> known = new HashMap<>();
  private final List<Gauge> gauges = new ArrayList<>();
  private ScheduledExecutorService thread;

  @Inject
  PlantGauges(MeterRegistry registry, Shops shops, Orders orders, Plans plans) {
    this.registry = registry;
    this.shops = shops;
    this.orders = orders;
    this.plans = plans;
  }

  /** What is known of a plant at a data stamp and a plan in force. */
  private record Figures(
      long dataStamp, String plan, int openOrders, long weightedLateMinutes, InkFigures ink) {}

  private record Gauge(MultiGauge gauge, ToDoubleFunction<Figures> figure) {}

  void start(@Observes StartupEvent event) {
    gauge("potlife.orders.open", "Orders that are open or started", Figures::openOrders);
    gauge(
        "potlife.plan.late.weighted.minutes",
        "Weighted late minutes of the plan in force",
        Figures::weightedLateMinutes);
    gauge(
        "potlife.plan.ink.activated.grams",
        "Ink that the plan in force activates, agent included",
        f -> f.ink().activatedG());
    gauge(
        "potlife.plan.ink.lost.grams",
        "Activated ink that no garment gets: reserve, rounding, screen charge",
        f -> f.ink().lostG());
    thread =
        Executors.newSingleThreadScheduledExecutor(
            work -> {
              Thread made = new Thread(work, "plant-gauges");
              made.setDaemon(true);
              return made;
            });
    thread.scheduleWithFixedDelay(this::read, 1, EVERY_S, TimeUnit.SECONDS);
  }

  void stop(@Observes ShutdownEvent event) {
    thread.shutdownNow();
  }

  void planChanged(@Observes(during = TransactionPhase.AFTER_SUCCESS) PlanChange change) {
    thread.execute(this::read);
  }

  private void gauge(String name, String description, ToDoubleFunction<Figures> figure) {
    gauges.add(
        new Gauge(MultiGauge.builder(name).description(description).register(registry), figure));
  }

  private void read() {
    try {
      Map<String, Figures> present = new HashMap<>();
      for (String plant : shops.listPlants()) {
        shops.findShop(plant).ifPresent(shop -> present.put(plant, figures(shop)));
      }
      known.clear();
      known.putAll(present);
      gauges.forEach(g -> g.gauge().register(rows(g.figure()), true));
    } catch (RuntimeException e) {
      LOG.warnf("The plants' figures could not be read: %s", e.getMessage());
    }
  }

  private List<Row<?>> rows(ToDoubleFunction<Figures> figure) {
    List<Row<?>> rows = new ArrayList<>();
    known.forEach(
        (plant, figures) ->
            rows.add(Row.of(Tags.of("plant", plant), figure.applyAsDouble(figures))));
    return rows;
  }

  private Figures figures(StoredShop shop) {
    String inForce = plans.findCurrentId(shop.plant()).orElse("");
    Figures before = known.get(shop.plant());
    if (before != null && before.dataStamp() == shop.dataStamp() && before.plan().equals(inForce)) {
      return before;
    }
    var sheet = plans.findCurrent(shop.plant()).flatMap(plan -> plan.sheet());
    return new Figures(
        shop.dataStamp(),
        inForce,
        orders.listOpen(shop.plant()).size(),
        sheet.map(s -> s.score().weightedLateMinutes()).orElse(0L),
        sheet.map(InkFigures::of).orElse(new InkFigures(0, 0)));
  }
}
