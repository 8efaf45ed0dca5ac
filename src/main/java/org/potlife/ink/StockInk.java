package org.potlife.ink;

import java.time.OffsetDateTime;

/**
 * A container of ink without agent on the shelf.
 *
 * @param container what is on its label; in the plan it stands where a batch would
 * @param ink id of the ink
 * @param massG what is in it, g
 * @param since when it was put there; the oldest is used first
 * @param lightOnly whether it once had agent and is for light garments alone (R13)
 * @param origin the batch it is left of; null when it was bought or counted in
 */
public record StockInk(
    String container,
    String ink,
    int massG,
    OffsetDateTime since,
    boolean lightOnly,
    String origin) {}
