package org.potlife.plan;

import java.util.List;
import org.potlife.audit.Finding;

/**
 * What became of a wish to publish.
 *
 * @param plan the plan after it
 * @param refused why it was refused, in words; null when it is published
 * @param findings broken rules, when these are the reason
 */
public record Publication(StoredPlan plan, String refused, List<Finding> findings) {

  public Publication {
    findings = List.copyOf(findings);
  }

  public boolean published() {
    return refused == null;
  }
}
