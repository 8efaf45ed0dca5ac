package org.potlife.web.plan;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import org.potlife.web.WallTime;
import org.potlife.web.shell.Shell;

/** The planner's screen. */
@CheckedTemplate(basePath = "screens")
final class PlanScreens {

  private PlanScreens() {}

  static native TemplateInstance plan(Shell shell, PlanDesk desk, WallTime time);
}
