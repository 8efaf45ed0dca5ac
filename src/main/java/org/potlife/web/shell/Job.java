package org.potlife.web.shell;

import io.quarkus.qute.TemplateEnum;

/** The jobs in a plant that have a screen of their own, in the order of the navigation. */
@TemplateEnum
public enum Job {
  PLAN("plan"),
  INK_ROOM("ink-room"),
  SCREEN_ROOM("screen-room"),
  PRESSES("presses"),
  ORDERS("orders"),
  SHOP("shop"),
  DAYS_END("days-end");

  private final String path;

  Job(String path) {
    this.path = path;
  }

  /** Last part of the screen's address. */
  public String path() {
    return path;
  }
}
