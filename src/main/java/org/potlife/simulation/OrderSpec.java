package org.potlife.simulation;

/**
 * What the simulation knows of one order.
 *
 * @param dueAt when the last piece must be off the belt, s from the origin; may be negative
 * @param weight weight of a late minute
 */
public record OrderSpec(int dueAt, int weight) {}
