package org.potlife.plan.internal;

import java.util.List;
import org.potlife.audit.AuditReport;
import org.potlife.audit.RuleResult;
import org.potlife.plan.PlanState;
import org.potlife.plan.PlanSummary;

/**
 * The audit of a plan.
 *
 * @param passed whether no rule is broken
 * @param checks facts checked in all
 * @param rules every rule, checked how often, broken where
 */
record AuditAnswer(
    String plan, int version, PlanState state, boolean passed, int checks, List<RuleResult> rules) {

  static AuditAnswer of(PlanSummary plan, AuditReport audit) {
    return new AuditAnswer(
        plan.id(), plan.version(), plan.state(), audit.passed(), audit.checks(), audit.rules());
  }
}
