package org.potlife.floor.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;
import org.potlife.floor.RunTally.Kind;

/** Pieces of a run were counted, good and spoiled ones since its beginning. */
@ApplicationScoped
class CountedEffect implements EventEffect<CountedEffect.Data> {

  private final FloorDesk desk;

  @Inject
  CountedEffect(FloorDesk desk) {
    this.desk = desk;
  }

  /**
   * @param person who tells it
   */
  record Data(
      @NotBlank @Size(max = 200) String run,
      @NotNull @Min(0) @Max(1000000) Integer good,
      @NotNull @Min(0) @Max(1000000) Integer spoiled,
      @Size(max = 60) String person) {}

  @Override
  public String type() {
    return "run.counted";
  }

  @Override
  public Class<Data> data() {
    return Data.class;
  }

  @Override
  public Verdict apply(ShopEvent event, Data data) {
    return desk.book(
        event,
        new FloorDesk.Entry(
            Kind.COUNTED, data.run(), data.good(), data.spoiled(), null, data.person()));
  }
}
