package org.potlife.room.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.time.Instant;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;
import org.potlife.ink.InkLedger;
import org.potlife.ink.InkRoom;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;

/**
 * What is left of a batch goes back on the shelf (R13): ink without agent, or by the plant's choice
 * ink whose pot life is over, as plain ink for light garments.
 */
@ApplicationScoped
class ReturnedEffect implements EventEffect<ReturnedEffect.Data> {

  private final InkDesk desk;
  private final Shops shops;

  @Inject
  ReturnedEffect(InkDesk desk, Shops shops) {
    this.desk = desk;
    this.shops = shops;
  }

  /**
   * @param massG what goes back, g
   * @param container what is on the label of the container it goes into; the batch's id with -R
   *     when left out
   * @param ink for activated ink: the ink without agent that it counts as from now on
   * @param person who put it back
   */
  record Data(
      @NotBlank @Size(max = 80) String batch,
      @NotNull @Min(1) @Max(500000) Integer massG,
      @Size(max = 80) @Pattern(regexp = ".*\\S.*", message = "must not be blank") String container,
      @Size(max = 40) String ink,
      @Size(max = 60) String person) {}

  @Override
  public String type() {
    return "ink.returned";
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
          Shop shop = shops.getShop(event.plant()).shop();
          boolean hadAgent = container.activatedAt != null || desk.takesAgent(shop, container.ink);
          if (container.activatedAt == null && hadAgent) {
            return Verdict.parked(data.batch() + " is not activated yet: nothing to put back.");
          }
          if (hadAgent) {
            String refusal = refusal(shop, container, data, event.time());
            if (refusal != null) {
              return Verdict.parked(refusal);
            }
          }
          desk.mixedAtLatest(container, event.time());
          // what is more than is left must not come onto the shelf
          InkLedger after = container.grams().returned(data.massG());
          String name = data.container() == null ? data.batch() + "-R" : data.container();
          if (name.length() > 80) {
            return Verdict.parked("Name the container: " + name + " is too long for a label.");
          }
          Verdict verdict =
              desk.stock(
                  event,
                  name,
                  hadAgent ? data.ink() : container.ink,
                  data.massG(),
                  hadAgent || container.lightOnly,
                  data.batch());
          if (verdict.contradiction() == null) {
            container.book(after);
            desk.mark(
                event, data.batch(), "returned", data.person(), data.massG(), null, "to " + name);
            desk.mark(
                event, name, "stocked", data.person(), data.massG(), null, "of " + data.batch());
          }
          return verdict;
        });
  }

  /** Why activated ink does not go onto the shelf; null when it may. */
  private String refusal(Shop shop, InkContainerEntity container, Data data, Instant at) {
    if (shop.inkRoom().leftovers() != InkRoom.Leftovers.PLAIN_FOR_LIGHT) {
      return "Only ink without agent goes back to stock; the plant discards activated leftovers.";
    }
    if (container.useBy == null || at.isBefore(container.useBy)) {
      return "The clock of %s runs until %s: until then it serves as it is."
          .formatted(container.name, WallTimes.of(shop, container.useBy));
    }
    if (data.ink() == null
        || shop.findInk(data.ink()).isEmpty()
        || desk.takesAgent(shop, data.ink())) {
      return "Say as which ink without agent it is kept (ink).";
    }
    return null;
  }
}
