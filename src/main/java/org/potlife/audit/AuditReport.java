package org.potlife.audit;

import java.util.List;

/**
 * The audit of one plan: every rule, checked how often, broken where.
 *
 * @param rules one result per rule, in the order of their numbers
 */
public record AuditReport(List<RuleResult> rules) {

  public AuditReport {
    rules = List.copyOf(rules);
  }

  /** Whether no rule is broken, so that the plan may be published. */
  public boolean passed() {
    return rules.stream().allMatch(rule -> rule.findings().isEmpty());
  }

  /** Facts checked in all. */
  public int checks() {
    return rules.stream().mapToInt(RuleResult::checked).sum();
  }

  /** All findings, in the order of the rules. */
  public List<Finding> findings() {
    return rules.stream().flatMap(rule -> rule.findings().stream()).toList();
  }
}
