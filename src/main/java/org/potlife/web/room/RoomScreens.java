package org.potlife.web.room;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import org.potlife.web.WallTime;
import org.potlife.web.shell.Shell;

/** The rooms' screens. */
@CheckedTemplate(basePath = "screens")
final class RoomScreens {

  private RoomScreens() {}

  static native TemplateInstance inkRoom(Shell shell, InkRoomScreen.Jobs jobs, WallTime time);

  static native TemplateInstance inkRoom$list(Shell shell, InkRoomScreen.Jobs jobs, WallTime time);

  static native TemplateInstance screenRoom(Shell shell, ScreenRoomScreen.Jobs jobs, WallTime time);

  static native TemplateInstance screenRoom$list(
      Shell shell, ScreenRoomScreen.Jobs jobs, WallTime time);

  static native TemplateInstance presses(Shell shell, PressScreen.Jobs jobs, WallTime time);

  static native TemplateInstance press(Shell shell, PressJobs jobs, WallTime time);

  static native TemplateInstance press$list(Shell shell, PressJobs jobs, WallTime time);
}
