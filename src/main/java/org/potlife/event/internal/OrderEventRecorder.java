package org.potlife.event.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.time.OffsetDateTime;
import java.util.Locale;
import org.potlife.order.Order;
import org.potlife.order.OrderChange;
import org.potlife.order.OrderState;

/** Writes down every change of an order, in the transaction of the change. */
@ApplicationScoped
class OrderEventRecorder {

  private final ObjectMapper mapper;
  private final ToldOrders told;

  @Inject
  OrderEventRecorder(ObjectMapper mapper, ToldOrders told) {
    this.mapper = mapper;
    this.told = told;
  }

  /** What the event says of the order. */
  record Data(
      String reference,
      long version,
      OrderState state,
      String customer,
      OffsetDateTime dueAt,
      int priority,
      int quantity) {}

  void record(@Observes OrderChange change) throws JsonProcessingException {
    Order order = change.order().order();
    if (told.isBeingTold(change.plant(), order.reference())) {
      // the event that tells it is in the log already
      return;
    }
    ShopEventEntity event = new ShopEventEntity();
    event.plant = change.plant();
    event.source = "/plants/" + change.plant() + "/orders";
    event.eventId = order.reference() + ":" + change.order().version();
    event.type = "org.potlife.order." + change.kind().name().toLowerCase(Locale.ROOT);
    event.time = change.at();
    event.recordedAt = change.at();
    event.data =
        mapper.writeValueAsString(
            new Data(
                order.reference(),
                change.order().version(),
                change.order().state(),
                order.customer(),
                order.dueAt(),
                order.priority(),
                order.garments().quantity()));
    event.persist();
  }
}
