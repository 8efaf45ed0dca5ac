package org.potlife.room.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;

/** A batch or container is empty: what should be left in it is lost. */
@ApplicationScoped
class EmptiedEffect implements EventEffect<EmptiedEffect.Data> {

  private final InkDesk desk;

  @Inject
  EmptiedEffect(InkDesk desk) {
    this.desk = desk;
  }

  /**
   * @param person who emptied it
   */
  record Data(@NotBlank @Size(max = 80) String batch, @Size(max = 60) String person) {}

  @Override
  public String type() {
    return "batch.emptied";
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
          int lostG = container.grams().leftG();
          container.book(container.grams().emptied());
          container.goneAt = event.time();
          desk.mark(event, data.batch(), "emptied", data.person(), lostG, null, null);
          return Verdict.movesPlan(desk.isWantedAfter(event.plant(), data.batch(), event.time()));
        });
  }
}
