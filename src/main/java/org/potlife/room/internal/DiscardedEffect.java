package org.potlife.room.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;

/** A batch or container is thrown away. */
@ApplicationScoped
class DiscardedEffect implements EventEffect<DiscardedEffect.Data> {

  private final InkDesk desk;

  @Inject
  DiscardedEffect(InkDesk desk) {
    this.desk = desk;
  }

  /**
   * @param massG what went into the waste, g; all that should be left when it is left out
   * @param reason why, for example pot life over
   * @param person who discarded it
   */
  record Data(
      @NotBlank @Size(max = 80) String batch,
      @Min(0) @Max(500000) Integer massG,
      @Size(max = 200) String reason,
      @Size(max = 60) String person) {}

  @Override
  public String type() {
    return "batch.discarded";
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
          desk.mixedAtLatest(container, event.time());
          int massG = data.massG() == null ? container.grams().leftG() : data.massG();
          container.book(container.grams().discarded(massG).emptied());
          container.goneAt = event.time();
          desk.mark(event, data.batch(), "discarded", data.person(), massG, null, data.reason());
          return Verdict.movesPlan(desk.isWantedAfter(event.plant(), data.batch(), event.time()));
        });
  }
}
