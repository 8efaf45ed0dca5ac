package org.potlife.plan.internal;

import java.util.Optional;
import org.potlife.audit.AuditReport;
import org.potlife.plan.PlanBasis;
import org.potlife.sheet.PlanSheet;

/** The audit that a plan must pass before it is published. */
interface PlanCheck {

  /**
   * @param published the plan whose frozen runs must stay
   */
  AuditReport check(PlanBasis basis, PlanSheet sheet, Optional<PlanSheet> published);
}
