package org.potlife.plan.internal;

import jakarta.inject.Singleton;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.potlife.plan.PlanBasis;
import org.potlife.plan.PlanState;
import org.potlife.sheet.PlanSheet;

/**
 * The documents of the plans that were read last. Every screen of a plant reads the plan in force
 * again and again; reading its documents from JSON is most of what that takes.
 */
@Singleton
class KeptPlans {

  /** The plans in force of a few plants, and the drafts that are looked at beside them. */
  private static final int KEPT = 8;

  private final Map<Key, Documents> kept =
      new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Documents> eldest) {
          return size() > KEPT;
        }
      };

  /** A plan as it was at one version of its row. */
  private record Key(String id, long rowVersion) {}

  /** What is read of a plan that stands. */
  record Documents(Optional<PlanBasis> basis, Optional<PlanSheet> sheet) {}

  /** The documents of a plan; those of one that is still being searched are read each time. */
  Documents of(PlanEntity plan, Supplier<Documents> read) {
    if (PlanState.SOLVING.word().equals(plan.state)) {
      return read.get();
    }
    Key key = new Key(plan.id, plan.rowVersion);
    synchronized (kept) {
      Documents found = kept.get(key);
      if (found != null) {
        return found;
      }
    }
    Documents documents = read.get();
    synchronized (kept) {
      kept.put(key, documents);
    }
    return documents;
  }
}
