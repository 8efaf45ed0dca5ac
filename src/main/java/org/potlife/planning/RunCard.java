package org.potlife.planning;

/** A movable run as the search sees it: its index in the engine's problem. */
public record RunCard(int index) {}
