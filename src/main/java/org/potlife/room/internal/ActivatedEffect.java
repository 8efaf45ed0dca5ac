package org.potlife.room.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import java.time.Duration;
import java.util.Optional;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;
import org.potlife.ink.InkSystem;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;

/** The agent is stirred into a batch: from the time of the event its clock counts. */
@ApplicationScoped
class ActivatedEffect implements EventEffect<ActivatedEffect.Data> {

  private final InkDesk desk;
  private final Shops shops;

  @Inject
  ActivatedEffect(InkDesk desk, Shops shops) {
    this.desk = desk;
    this.shops = shops;
  }

  /**
   * @param agentG agent that was stirred in, g; the plan's mass when left out
   * @param person who stirred
   */
  record Data(
      @NotBlank @Size(max = 80) String batch,
      @Min(0) @Max(100000) Integer agentG,
      @Size(max = 60) String person) {}

  @Override
  public String type() {
    return "batch.activated";
  }

  @Override
  public Class<Data> data() {
    return Data.class;
  }

  @Override
  public Verdict apply(ShopEvent event, Data data) {
    return desk.book(
        event,
        data.batch(),
        container -> {
          Optional<InkSystem> system = systemOf(event.plant(), container.ink);
          if (system.isEmpty() || !system.get().activated() || container.stock) {
            return Verdict.parked(container.ink + " takes no agent.");
          }
          if (container.activatedAt != null) {
            return Verdict.parked(
                "%s is activated since %s."
                    .formatted(
                        data.batch(),
                        WallTimes.of(shops.getShop(event.plant()).shop(), container.activatedAt)));
          }
          Optional<BatchLine> line = desk.findPlanned(event.plant(), data.batch());
          int agentG =
              data.agentG() == null ? line.map(BatchLine::agentG).orElse(0) : data.agentG();
          desk.mixedAtLatest(container, event.time());
          container.activatedAt = event.time();
          container.useBy = event.time().plus(Duration.ofMinutes(system.get().potLifeMinutes()));
          container.book(container.grams().activated(agentG));
          desk.mark(event, data.batch(), "activated", data.person(), agentG, null, null);
          return Verdict.movesPlan(line.map(planned -> differs(planned, event)).orElse(true));
        });
  }

  private Optional<InkSystem> systemOf(String plant, String ink) {
    Shop shop = shops.getShop(plant).shop();
    return shop.findInk(ink).flatMap(found -> shop.findInkSystem(found.system()));
  }

  /** A minute more or less is how people tell the time. */
  private static boolean differs(BatchLine planned, ShopEvent event) {
    return Duration.between(planned.activatedAt().toInstant(), event.time())
            .abs()
            .compareTo(Duration.ofMinutes(1))
        > 0;
  }
}
