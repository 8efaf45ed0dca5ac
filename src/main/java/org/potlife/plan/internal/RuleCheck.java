package org.potlife.plan.internal;

import jakarta.inject.Singleton;
import java.util.Optional;
import org.potlife.audit.Audit;
import org.potlife.audit.AuditReport;
import org.potlife.plan.PlanBasis;
import org.potlife.sheet.PlanSheet;

/** Every rule of the shop, from the independent audit. */
@Singleton
class RuleCheck implements PlanCheck {

  @Override
  public AuditReport check(PlanBasis basis, PlanSheet sheet, Optional<PlanSheet> published) {
    return Audit.of(
        basis.shop(), basis.orders(), sheet, published, basis.rooms(), basis.ink(), basis.floor());
  }
}
