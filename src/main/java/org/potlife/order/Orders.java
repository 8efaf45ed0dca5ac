package org.potlife.order;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import org.potlife.platform.problem.ProblemException;

/** The plants' orders. */
public interface Orders {

  /** The order with this reference, cancelled ones included. */
  Optional<StoredOrder> findOrder(String plant, String reference);

  /**
   * The order with this reference.
   *
   * @throws ProblemException 404 when the plant has none
   */
  StoredOrder getOrder(String plant, String reference);

  /** What is left to be planned: orders that are open or started, by due date. */
  List<Order> listOpen(String plant);

  /**
   * Orders that were finished at or after a moment: their garments and screens may still be about.
   */
  List<Order> listFinishedSince(String plant, Instant since);

  /** One page of the orders, by due date and reference. */
  List<StoredOrder> listOrders(String plant, OrderQuery query);

  /**
   * Stores an order that has passed {@link OrderCheck}. The same order again changes nothing. Needs
   * the plant's lock.
   *
   * @param allow sees the version that is there and may refuse
   * @throws ProblemException 409 when the order is finished
   */
  Placement put(String plant, Order order, Consumer<OptionalLong> allow);

  /** The same, for what was told to have been so at a moment. */
  Placement putTold(String plant, Order order, Instant toldAt);

  /**
   * Cancels an order; cancelling it again changes nothing. Needs the plant's lock.
   *
   * @throws ProblemException 404 when there is none, 409 when printing has started
   */
  StoredOrder cancel(String plant, String reference, Consumer<OptionalLong> allow);

  /** The same, for what was told to have happened at a moment. */
  StoredOrder cancelTold(String plant, String reference, Instant toldAt);

  /** When the order's document, or its end, was last told; empty when the plant has none. */
  Optional<Instant> findToldAt(String plant, String reference);

  /**
   * Notes that printing has started or that the order is finished. No plan is stale by that alone.
   * Needs the plant's lock.
   *
   * @throws ProblemException 404 when there is none
   */
  StoredOrder moveTo(String plant, String reference, OrderState state);

  /** What became of an order that was put. */
  record Placement(StoredOrder stored, Outcome outcome) {}

  /** Whether a put made, changed or left an order. */
  enum Outcome {
    PLACED,
    CHANGED,
    UNCHANGED
  }
}
