/**
 * From open orders to a plan: maps the shop's words to the engine's {@link
 * org.potlife.simulation.Problem}, starts from the best of several dispatch rules, searches with
 * OptaPlanner, and writes the result down as a {@link org.potlife.sheet.PlanSheet}.
 *
 * <p>The decision is a list variable: which run on which press at which position. The score of a
 * set of sequences is what the simulation says of them. Runs that the published plan has frozen
 * stay outside the lists and enter as bookings.
 */
package org.potlife.planning;
