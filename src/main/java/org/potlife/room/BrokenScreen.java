package org.potlife.room;

import java.time.OffsetDateTime;

/**
 * A screen that cannot be printed with any more and must be made anew. Its frame is reclaimed; for
 * a torn mesh the plant lowers the number of its frames.
 *
 * @param screen id of the screen on the plan, or of a kept stencil
 * @param at when it broke
 */
public record BrokenScreen(String screen, OffsetDateTime at) {}
