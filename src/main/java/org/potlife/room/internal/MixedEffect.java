package org.potlife.room.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;

/** A batch is weighed and mixed. */
@ApplicationScoped
class MixedEffect implements EventEffect<MixedEffect.Data> {

  private final InkDesk desk;

  @Inject
  MixedEffect(InkDesk desk) {
    this.desk = desk;
  }

  /**
   * @param massG what was weighed in, without agent, g; the plan's mass when left out
   * @param person who mixed it
   */
  record Data(
      @NotBlank @Size(max = 80) String batch,
      @Min(0) @Max(500000) Integer massG,
      @Size(max = 60) String person) {}

  @Override
  public String type() {
    return "batch.mixed";
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
          if (container.mixedAt != null || container.stock) {
            return Verdict.parked(data.batch() + " is mixed already.");
          }
          int massG = data.massG() == null ? container.plannedG : data.massG();
          container.mixedAt = event.time();
          container.book(container.grams().mixed(massG));
          desk.mark(event, data.batch(), "mixed", data.person(), massG, null, null);
          return Verdict.movesPlan(massG != container.plannedG);
        });
  }
}
