package org.potlife.floor.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;
import org.potlife.order.Garments;

/**
 * The garments of an order are in, or will be at another time than thought: fewer, more, earlier or
 * later. Fewer than ordered is taken: the plan lists what is missing.
 */
@ApplicationScoped
class GarmentsEffect implements EventEffect<GarmentsEffect.Data> {

  private final ToldGarments garments;

  @Inject
  GarmentsEffect(ToldGarments garments) {
    this.garments = garments;
  }

  /**
   * @param blanks pieces that there are in all
   * @param availableFrom when they can be printed; the event's time when left out
   * @param person who counted
   */
  record Data(
      @NotBlank @Size(max = 60) String order,
      @NotNull @Min(1) @Max(110000) Integer blanks,
      OffsetDateTime availableFrom,
      @Size(max = 60) String person) {}

  @Override
  public String type() {
    return "garments.received";
  }

  @Override
  public Class<Data> data() {
    return Data.class;
  }

  @Override
  public Verdict apply(ShopEvent event, Data data) {
    OffsetDateTime from =
        data.availableFrom() == null ? event.time().atOffset(ZoneOffset.UTC) : data.availableFrom();
    return garments.change(
        event,
        data.order(),
        Set.of(type()),
        List.of("order"),
        order -> {
          Garments g = order.garments();
          Garments received =
              new Garments(
                  g.style(),
                  g.kind(),
                  g.colour(),
                  g.lightness(),
                  g.cottonPercent(),
                  g.dye(),
                  g.quantity(),
                  data.blanks(),
                  from,
                  g.lengthMm(),
                  g.widthMm(),
                  g.massG());
          return order.with(received, order.prints());
        });
  }
}
