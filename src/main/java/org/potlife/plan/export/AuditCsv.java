package org.potlife.plan.export;

import org.potlife.audit.AuditReport;
import org.potlife.audit.Finding;
import org.potlife.audit.RuleResult;

/** The audit of a plan as a file. */
public final class AuditCsv {

  private AuditCsv() {}

  /** One row per finding, and one per rule without a finding. */
  public static String of(AuditReport audit) {
    CsvTable csv = new CsvTable("rule", "name", "checked", "subject", "detail");
    for (RuleResult rule : audit.rules()) {
      if (rule.findings().isEmpty()) {
        csv.row(rule.rule(), rule.name(), rule.checked(), null, null);
      }
      for (Finding finding : rule.findings()) {
        csv.row(finding.rule(), rule.name(), rule.checked(), finding.subject(), finding.detail());
      }
    }
    return csv.text();
  }
}
