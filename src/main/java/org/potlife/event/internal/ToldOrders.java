package org.potlife.event.internal;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.function.Supplier;

/**
 * Which order an event is about just now: a change that was told stands in the log as it was told,
 * and not once more as the service's own event.
 */
@ApplicationScoped
class ToldOrders {

  private final ThreadLocal<String> current = new ThreadLocal<>();

  boolean isBeingTold(String plant, String reference) {
    return name(plant, reference).equals(current.get());
  }

  <T> T telling(String plant, String reference, Supplier<T> change) {
    current.set(name(plant, reference));
    try {
      return change.get();
    } finally {
      current.remove();
    }
  }

  private static String name(String plant, String reference) {
    return plant + "/" + reference;
  }
}
