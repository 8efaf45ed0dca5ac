package org.potlife.order.internal;

import io.quarkus.arc.DefaultBean;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Map;
import java.util.Optional;
import org.potlife.order.Promise;
import org.potlife.order.PromiseLookup;

/** Stands in while nothing plans. */
@ApplicationScoped
@DefaultBean
class NoPromises implements PromiseLookup {

  @Override
  public Optional<Promise> findPromise(String plant, String reference) {
    return Optional.empty();
  }

  @Override
  public Map<String, Promise> listPromises(String plant) {
    return Map.of();
  }
}
