package org.potlife.floor;

import java.time.OffsetDateTime;

/**
 * A time for which a press is staffed otherwise than by its shifts, or just as its shifts say: what
 * was told last of a moment holds.
 */
public record Staffing(String press, OffsetDateTime from, OffsetDateTime to, boolean staffed) {}
