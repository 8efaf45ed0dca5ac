package org.potlife.shop;

import java.time.Instant;

/**
 * A plant's data stamp has moved: every plan made so far is stale. Fired as a CDI event within the
 * transaction of the change: an observer that fails undoes it.
 *
 * @param at when it was stored
 */
public record PlantChanged(String plant, Instant at) {}
