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
import org.potlife.shop.Shops;

/** A run has drawn from a batch or container. */
@ApplicationScoped
class UsedEffect implements EventEffect<UsedEffect.Data> {

  private final InkDesk desk;
  private final InkLessons lessons;
  private final Shops shops;

  @Inject
  UsedEffect(InkDesk desk, InkLessons lessons, Shops shops) {
    this.desk = desk;
    this.shops = shops;
    this.lessons = lessons;
  }

  /**
   * @param massG ink that went onto garments, handling loss included: what was taken out of the
   *     container less what came back and what is on the screens, g
   * @param screensG ink left on the screens, g, default 0
   * @param pieces pieces printed with it; with them the grams per piece are learned
   * @param person who weighed
   */
  record Data(
      @NotBlank @Size(max = 200) String run,
      @NotBlank @Size(max = 80) String batch,
      @NotNull @Min(0) @Max(500000) Integer massG,
      @Min(0) @Max(100000) Integer screensG,
      @Min(1) @Max(1000000) Integer pieces,
      @Size(max = 60) String person) {}

  @Override
  public String type() {
    return "run.ink-used";
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
          boolean needsAgent =
              !container.stock
                  && desk.takesAgent(shops.getShop(event.plant()).shop(), container.ink);
          if (needsAgent && container.activatedAt == null) {
            return Verdict.parked(data.batch() + " is not activated; tell batch.activated first.");
          }
          desk.mixedAtLatest(container, event.time());
          int screensG = data.screensG() == null ? 0 : data.screensG();
          container.book(container.grams().used(data.massG(), screensG));
          desk.mark(
              event,
              data.batch(),
              "used",
              data.person(),
              data.massG() + screensG,
              data.run(),
              null);
          if (data.pieces() != null && data.massG() > 0) {
            lessons.learn(event, data.run(), container.ink, data.massG(), data.pieces());
          }
          return Verdict.noted();
        });
  }
}
