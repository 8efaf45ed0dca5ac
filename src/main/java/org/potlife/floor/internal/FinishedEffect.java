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

/** A run is finished, with its good and spoiled pieces. */
@ApplicationScoped
class FinishedEffect implements EventEffect<FinishedEffect.Data> {

  private final FloorDesk desk;

  @Inject
  FinishedEffect(FloorDesk desk) {
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
    return "run.finished";
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
            Kind.ENDED, data.run(), data.good(), data.spoiled(), null, data.person()));
  }
}
