package org.potlife.event;

/**
 * A shop event took effect. Fired as a CDI event within the transaction that records it: an
 * observer that fails undoes it. An event that was known or is parked is not announced.
 */
public record EventApplied(ShopEvent event) {}
