package org.potlife.web.office;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.List;
import org.potlife.plan.list.PlanDrawing;
import org.potlife.web.WallTime;
import org.potlife.web.shell.Shell;

/** The office's screens. */
@CheckedTemplate(basePath = "screens")
final class OfficeScreens {

  private OfficeScreens() {}

  static native TemplateInstance orders(Shell shell, OrderDesk desk, WallTime time);

  static native TemplateInstance order(
      Shell shell, OrderDesk.Row row, List<PlanDrawing.Run> runs, WallTime time);

  static native TemplateInstance orderTable(Shell shell, List<String> columns);

  static native TemplateInstance shop(Shell shell);

  static native TemplateInstance daysEnd(Shell shell, DayReport report, DayInk ink, WallTime time);
}
