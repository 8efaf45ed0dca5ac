package org.potlife.room;

import java.time.OffsetDateTime;

/**
 * A look at a screen that dries: dry or still wet (R5).
 *
 * @param screen id of the screen on the plan
 * @param at when somebody looked
 */
public record EmulsionReading(String screen, OffsetDateTime at, boolean dry) {}
