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

  @Inject
  OrderEventRecorder(ObjectMapper mapper) {
    this.mapper = mapper;
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
