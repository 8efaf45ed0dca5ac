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

/** Further pieces of a run were found spoiled after they had been counted as good. */
@ApplicationScoped
class SpoiledEffect implements EventEffect<SpoiledEffect.Data> {

  private final FloorDesk desk;

  @Inject
  SpoiledEffect(FloorDesk desk) {
    this.desk = desk;
  }

  /**
   * @param person who tells it
   */
  record Data(
      @NotBlank @Size(max = 200) String run,
      @NotNull @Min(1) @Max(1000000) Integer pieces,
      @Size(max = 200) String cause,
      @Size(max = 60) String person) {}

  @Override
  public String type() {
    return "run.spoiled";
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
            Kind.SPOILED, data.run(), null, data.pieces(), data.cause(), data.person()));
  }
}
