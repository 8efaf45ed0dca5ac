package org.potlife.room;

import java.time.Instant;

/** What the rooms of a plant have reported. */
public interface Rooms {

  /** The reports up to {@code now}, as far as a plan made at that moment needs them. */
  RoomState stateAt(String plant, Instant now);
}
