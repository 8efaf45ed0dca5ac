/**
 * What the press crew reports while the day goes by: runs that begin, are counted and end, presses
 * and dryers that are down, shifts that are staffed otherwise than usual.
 *
 * <p>{@link org.potlife.floor.Floor} reads it back as one {@link org.potlife.floor.FloorReport},
 * which a plan keeps. Each event counts at its own time, so that the report is the same in whatever
 * order the events came in. {@link org.potlife.floor.OrderProgress} tells what is still to be
 * printed of an order. How a plan follows is in docs/model.md, "The day as it goes".
 */
package org.potlife.floor;
