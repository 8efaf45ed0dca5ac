package org.potlife.order.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.potlife.order.Order;
import org.potlife.order.OrderChange;
import org.potlife.order.OrderQuery;
import org.potlife.order.OrderState;
import org.potlife.order.Orders;
import org.potlife.order.StoredOrder;
import org.potlife.platform.problem.ProblemException;
import org.potlife.shop.Shops;

/** The orders in the table customer_order. */
@ApplicationScoped
class StoredOrders implements Orders {

  /** What a stored reference looks like; anything else need not be looked up. */
  private static final Pattern REFERENCE = Pattern.compile("[A-Za-z0-9._~-]{1,60}");

  private final Shops shops;
  private final OrderDocuments documents;
  private final Event<OrderChange> changes;
  private final Clock clock;

  @Inject
  StoredOrders(Shops shops, OrderDocuments documents, Event<OrderChange> changes, Clock clock) {
    this.shops = shops;
    this.documents = documents;
    this.changes = changes;
    this.clock = clock;
  }

  @Override
  @Transactional
  public Optional<StoredOrder> findOrder(String plant, String reference) {
    return find(plant, reference).map(this::stored);
  }

  @Override
  @Transactional
  public StoredOrder getOrder(String plant, String reference) {
    return stored(get(plant, reference));
  }

  @Override
  @Transactional
  public List<Order> listOpen(String plant) {
    return OrderEntity.listOpen(plant).stream().map(row -> documents.read(row.body)).toList();
  }

  @Override
  @Transactional
  public List<Order> listFinishedSince(String plant, Instant since) {
    return OrderEntity.listFinishedSince(plant, since).stream()
        .map(row -> documents.read(row.body))
        .toList();
  }

  @Override
  @Transactional
  public Optional<Instant> findToldAt(String plant, String reference) {
    return find(plant, reference).map(row -> row.toldAt);
  }

  @Override
  @Transactional
  public List<StoredOrder> listOrders(String plant, OrderQuery query) {
    return OrderEntity.listPage(plant, query).stream().map(this::stored).toList();
  }

  @Override
  @Transactional(Transactional.TxType.MANDATORY)
  public Placement put(String plant, Order order, Consumer<OptionalLong> allow) {
    return put(plant, order, allow, now());
  }

  @Override
  @Transactional(Transactional.TxType.MANDATORY)
  public Placement putTold(String plant, Order order, Instant toldAt) {
    return put(plant, order, version -> {}, toldAt);
  }

  private Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MICROS);
  }

  private Placement put(String plant, Order order, Consumer<OptionalLong> allow, Instant toldAt) {
    Optional<OrderEntity> present = find(plant, order.reference());
    allow.accept(version(present));
    String body = documents.write(order);
    String hash = OrderDocuments.hash(body);
    OrderState before = present.map(StoredOrders::state).orElse(null);
    if (before == OrderState.FINISHED) {
      throw ProblemException.conflict(
          "The order is finished. Place what is still wanted under another reference.");
    }
    if (before != null
        && before != OrderState.CANCELLED
        && present.get().contentHash.equals(hash)) {
      present.get().toldAt = toldAt;
      return new Placement(stored(present.get()), Outcome.UNCHANGED);
    }
    boolean placed = before == null || before == OrderState.CANCELLED;
    OrderEntity entity = present.orElseGet(() -> fresh(plant, order.reference()));
    entity.body = body;
    entity.contentHash = hash;
    entity.dueAt = order.dueAt().toInstant().truncatedTo(ChronoUnit.MICROS);
    entity.priority = order.priority();
    entity.toldAt = toldAt;
    entity.state = (placed ? OrderState.OPEN : before).word();
    StoredOrder stored =
        changed(entity, placed ? OrderChange.Kind.PLACED : OrderChange.Kind.CHANGED);
    return new Placement(stored, placed ? Outcome.PLACED : Outcome.CHANGED);
  }

  @Override
  @Transactional(Transactional.TxType.MANDATORY)
  public StoredOrder cancel(String plant, String reference, Consumer<OptionalLong> allow) {
    return cancel(plant, reference, allow, now());
  }

  @Override
  @Transactional(Transactional.TxType.MANDATORY)
  public StoredOrder cancelTold(String plant, String reference, Instant toldAt) {
    return cancel(plant, reference, version -> {}, toldAt);
  }

  private StoredOrder cancel(
      String plant, String reference, Consumer<OptionalLong> allow, Instant toldAt) {
    OrderEntity entity = get(plant, reference);
    allow.accept(OptionalLong.of(entity.version));
    OrderState state = state(entity);
    if (state == OrderState.STARTED || state == OrderState.FINISHED) {
      throw ProblemException.conflict(
          "The order is "
              + state.word()
              + ", so it cannot be cancelled. What is printed is printed; lower its quantity"
              + " instead.");
    }
    if (state == OrderState.CANCELLED) {
      return stored(entity);
    }
    entity.state = OrderState.CANCELLED.word();
    entity.toldAt = toldAt;
    return changed(entity, OrderChange.Kind.CANCELLED);
  }

  @Override
  @Transactional(Transactional.TxType.MANDATORY)
  public StoredOrder moveTo(String plant, String reference, OrderState state) {
    OrderEntity entity = get(plant, reference);
    if (state(entity) != state) {
      entity.state = state.word();
      return noted(entity, OrderChange.Kind.CHANGED);
    }
    return stored(entity);
  }

  private OrderEntity fresh(String plant, String reference) {
    OrderEntity entity = new OrderEntity();
    entity.key = new OrderEntity.Key(plant, reference);
    entity.createdAt = clock.instant();
    return entity;
  }

  private StoredOrder changed(OrderEntity entity, OrderChange.Kind kind) {
    shops.moveDataStamp(entity.key.plant());
    return noted(entity, kind);
  }

  private StoredOrder noted(OrderEntity entity, OrderChange.Kind kind) {
    Instant now = clock.instant();
    entity.version++;
    entity.changedAt = now;
    entity.persist();
    StoredOrder stored = stored(entity);
    changes.fire(new OrderChange(entity.key.plant(), stored, kind, now));
    return stored;
  }

  private OrderEntity get(String plant, String reference) {
    return find(plant, reference)
        .orElseThrow(
            () -> ProblemException.notFound("The plant has no order with this reference."));
  }

  private static Optional<OrderEntity> find(String plant, String reference) {
    boolean plausible =
        Stream.of(plant, reference).allMatch(name -> REFERENCE.matcher(name).matches());
    return plausible
        ? OrderEntity.findByIdOptional(new OrderEntity.Key(plant, reference))
        : Optional.empty();
  }

  private static OptionalLong version(Optional<OrderEntity> entity) {
    return entity.isPresent() ? OptionalLong.of(entity.get().version) : OptionalLong.empty();
  }

  private StoredOrder stored(OrderEntity entity) {
    return new StoredOrder(documents.read(entity.body), state(entity), entity.version);
  }

  private static OrderState state(OrderEntity entity) {
    return Stream.of(OrderState.values())
        .filter(state -> state.word().equals(entity.state))
        .findFirst()
        .orElseThrow();
  }
}
