package org.potlife.order;

/**
 * An order as stored.
 *
 * @param version counts its changes, from 1
 */
public record StoredOrder(Order order, OrderState state, long version) {}
