package org.potlife.room.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;

/** Somebody has looked: the batch has stood long enough and may be used. */
@ApplicationScoped
class ReadyEffect implements EventEffect<ReadyEffect.Data> {

  private final InkDesk desk;

  @Inject
  ReadyEffect(InkDesk desk) {
    this.desk = desk;
  }

  /**
   * @param person who looked
   */
  record Data(@NotBlank @Size(max = 80) String batch, @Size(max = 60) String person) {}

  @Override
  public String type() {
    return "batch.ready";
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
          if (container.mixedAt == null && !container.stock) {
            return Verdict.parked(data.batch() + " is not mixed; tell batch.mixed first.");
          }
          desk.mark(event, data.batch(), "ready", data.person(), null, null, null);
          return Verdict.noted();
        });
  }
}
