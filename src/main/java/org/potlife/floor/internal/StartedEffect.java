package org.potlife.floor.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;
import org.potlife.floor.RunTally.Kind;

/** The set-up of a run has begun. */
@ApplicationScoped
class StartedEffect implements EventEffect<StartedEffect.Data> {

  private final FloorDesk desk;

  @Inject
  StartedEffect(FloorDesk desk) {
    this.desk = desk;
  }

  /**
   * @param person who tells it
   */
  record Data(@NotBlank @Size(max = 200) String run, @Size(max = 60) String person) {}

  @Override
  public String type() {
    return "run.started";
  }

  @Override
  public Class<Data> data() {
    return Data.class;
  }

  @Override
  public Verdict apply(ShopEvent event, Data data) {
    return desk.book(
        event, new FloorDesk.Entry(Kind.STARTED, data.run(), null, null, null, data.person()));
  }
}
