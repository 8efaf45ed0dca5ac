package org.potlife.plan.internal;

import jakarta.annotation.Priority;
import jakarta.enterprise.inject.Alternative;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.Optional;
import org.potlife.audit.AuditReport;
import org.potlife.audit.Finding;
import org.potlife.audit.RuleResult;
import org.potlife.plan.PlanBasis;
import org.potlife.sheet.PlanSheet;

/**
 * Lets the plan written by hand pass, which is no sound one, unless the shop's name asks for a
 * finding.
 */
@Alternative
@Priority(1)
@Singleton
class LenientCheck implements PlanCheck {

  static final String UNSOUND = "unsound";

  @Override
  public AuditReport check(PlanBasis basis, PlanSheet sheet, Optional<PlanSheet> published) {
    List<Finding> findings =
        basis.shop().name().contains(UNSOUND)
            ? List.of(new Finding("R14", "D1", "the belt runs at 2.40 m/min, 2.00 are allowed"))
            : List.of();
    return new AuditReport(List.of(new RuleResult("R14", "Dwell", 5, findings)));
  }
}
