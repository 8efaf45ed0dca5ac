package org.potlife.audit;

import java.util.List;

/**
 * How one rule fared.
 *
 * @param rule number of the rule
 * @param name the rule in a few words
 * @param checked how many facts were checked
 * @param findings where it is broken; empty when it holds
 */
public record RuleResult(String rule, String name, int checked, List<Finding> findings) {

  public RuleResult {
    findings = List.copyOf(findings);
  }
}
