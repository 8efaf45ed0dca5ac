package org.potlife.room.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;

/** Ink without agent is put on the shelf. */
@ApplicationScoped
class StockedEffect implements EventEffect<StockedEffect.Data> {

  private final InkDesk desk;
  private final Shops shops;

  @Inject
  StockedEffect(InkDesk desk, Shops shops) {
    this.desk = desk;
    this.shops = shops;
  }

  /**
   * @param container what is on its label
   * @param person who put it there
   */
  record Data(
      @NotBlank @Size(max = 80) String container,
      @NotBlank @Size(max = 40) String ink,
      @NotNull @Min(1) @Max(500000) Integer massG,
      @Size(max = 60) String person) {}

  @Override
  public String type() {
    return "ink.stocked";
  }

  @Override
  public Class<Data> data() {
    return Data.class;
  }

  @Override
  public Verdict apply(ShopEvent event, Data data) {
    Shop shop = shops.getShop(event.plant()).shop();
    if (shop.findInk(data.ink()).isEmpty() || desk.takesAgent(shop, data.ink())) {
      return Verdict.parked(
          "The plant has no ink " + data.ink() + " without agent, and no other goes on the shelf.");
    }
    Verdict verdict = desk.stock(event, data.container(), data.ink(), data.massG(), false, null);
    if (verdict.contradiction() == null) {
      desk.mark(event, data.container(), "stocked", data.person(), data.massG(), null, null);
    }
    return verdict;
  }
}
