package org.potlife.web.shell;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** Screens that say why there is nothing else to see. */
@CheckedTemplate(basePath = "screens")
final class FrameTemplates {

  private FrameTemplates() {}

  static native TemplateInstance noPlant(String detail);

  static native TemplateInstance trouble(Shell shell, String title, String detail);
}
