package org.potlife.outbox.internal;

import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.TreeMap;
import org.potlife.order.Promise;
import org.potlife.order.PromiseLookup;
import org.potlife.outbox.Notice;
import org.potlife.outbox.Outbox;
import org.potlife.plan.PlanChange;

/**
 * Tells of every order to which the plan in force now promises something else than was last told:
 * another finish, more or less late, a place or none. Seconds are no change.
 */
@ApplicationScoped
class PromiseTeller {

  private static final int SECONDS_PER_MINUTE = 60;

  private final Outbox outbox;
  private final PromiseLookup promises;
  private final PromisesTold told;

  @Inject
  PromiseTeller(Outbox outbox, PromiseLookup promises, PromisesTold told) {
    this.outbox = outbox;
    this.promises = promises;
    this.told = told;
  }

  /**
   * What promise.changed says.
   *
   * @param order the order's reference
   * @param plan the plan that promises it
   * @param plannedFinish last garment off the belt; null when the order has no place
   * @param lateMinutes minutes after the due date, rounded up
   * @param cause why it is late or has no place
   * @param before what was last told; null the first time
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Data(
      String order,
      String plan,
      OffsetDateTime plannedFinish,
      long lateMinutes,
      String cause,
      Promise before) {}

  /** Within the transaction that brings the plan into force. */
  void tell(PlanChange published) {
    String plant = published.plant();
    Map<String, Promise> before = told.list(plant);
    Map<String, Promise> changed = new TreeMap<>(promises.listPromises(plant));
    changed.entrySet().removeIf(now -> saysTheSame(before.get(now.getKey()), now.getValue()));
    changed.forEach(
        (order, promise) ->
            outbox.add(
                new Notice(
                    plant,
                    "/plants/" + plant + "/promises",
                    order + ":" + published.plan(),
                    "promise.changed",
                    order,
                    published.at(),
                    new Data(
                        order,
                        published.plan(),
                        promise.plannedFinish(),
                        promise.lateMinutes(),
                        promise.cause(),
                        inZoneOf(promise, before.get(order))))));
    told.keep(plant, changed);
  }

  /** Whether both say the same to a customer; the cause may be put in other words. */
  private static boolean saysTheSame(Promise before, Promise now) {
    return before != null
        && before.lateMinutes() == now.lateMinutes()
        && minute(before.plannedFinish()) == minute(now.plannedFinish());
  }

  private static long minute(OffsetDateTime finish) {
    return finish == null
        ? Long.MIN_VALUE
        : Math.floorDiv(finish.toEpochSecond(), SECONDS_PER_MINUTE);
  }

  /** The database keeps no offset; the plant's is that of the new promise. */
  private static Promise inZoneOf(Promise now, Promise before) {
    if (before == null || before.plannedFinish() == null || now.plannedFinish() == null) {
      return before;
    }
    return new Promise(
        before.plannedFinish().withOffsetSameInstant(now.plannedFinish().getOffset()),
        before.lateMinutes(),
        before.cause());
  }
}
