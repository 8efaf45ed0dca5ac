package org.potlife.room;

/** The screens of the plan in force; told by whoever keeps the plans. */
public interface KnownScreens {

  /** Whether a screen of this id is on the plan in force. */
  boolean isPlanned(String plant, String screen);
}
