package org.potlife.order;

import java.util.Map;
import java.util.Optional;

/** Where promises come from: the plan in force. */
public interface PromiseLookup {

  /** The promise for an order; empty when no plan is in force or the plan does not know it. */
  Optional<Promise> findPromise(String plant, String reference);

  /** The promise of every order that the plan in force knows, by reference. */
  Map<String, Promise> listPromises(String plant);
}
