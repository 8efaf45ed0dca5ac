package org.potlife.web;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.List;
import org.potlife.plan.list.ActivationList;
import org.potlife.plan.list.BatchSheet;
import org.potlife.plan.list.BeltList;
import org.potlife.plan.list.LateList;
import org.potlife.plan.list.PlanOverview;
import org.potlife.plan.list.PressList;
import org.potlife.plan.list.ScreenList;
import org.potlife.room.InkContainer;

/** The sheets. */
@CheckedTemplate(basePath = "pages")
final class Pages {

  private Pages() {}

  static native TemplateInstance plan(
      PageHead head, WallTime time, PlanOverview overview, PressList presses);

  static native TemplateInstance activations(PageHead head, WallTime time, ActivationList list);

  static native TemplateInstance batch(
      PageHead head, WallTime time, BatchSheet sheet, InkContainer told, BatchLabel label);

  static native TemplateInstance labels(
      PageHead head, WallTime time, List<BatchLabel> labels, boolean single);

  static native TemplateInstance screens(PageHead head, WallTime time, ScreenList list);

  static native TemplateInstance presses(PageHead head, WallTime time, PressList list);

  static native TemplateInstance belts(PageHead head, WallTime time, BeltList list);

  static native TemplateInstance late(PageHead head, WallTime time, LateList list);

  static native TemplateInstance waiting(String title, String text, boolean again, String link);

  static native TemplateInstance start(StartView view);
}
