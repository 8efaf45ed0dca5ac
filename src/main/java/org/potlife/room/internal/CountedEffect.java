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

/** A container was put on the scale: the book follows it. */
@ApplicationScoped
class CountedEffect implements EventEffect<CountedEffect.Data> {

  private final InkDesk desk;

  @Inject
  CountedEffect(InkDesk desk) {
    this.desk = desk;
  }

  /**
   * @param massG what is in it, without the container, g
   * @param person who counted
   */
  record Data(
      @NotBlank @Size(max = 80) String container,
      @NotNull @Min(0) @Max(500000) Integer massG,
      @Size(max = 60) String person) {}

  @Override
  public String type() {
    return "ink.counted";
  }

  @Override
  public Class<Data> data() {
    return Data.class;
  }

  @Override
  public Verdict apply(ShopEvent event, Data data) {
    return desk.book(
        event,
        data.container(),
        container -> {
          desk.mixedAtLatest(container, event.time());
          int before = container.grams().leftG();
          container.book(container.grams().counted(data.massG()));
          desk.mark(event, data.container(), "counted", data.person(), data.massG(), null, null);
          return Verdict.movesPlan(data.massG() < before);
        });
  }
}
