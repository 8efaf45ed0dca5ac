/**
 * Checks of the simulation and the search against the outside: theorems of scheduling, published
 * instances with known optima, and small complete cases whose proven optimum comes from CP-SAT, a
 * constraint solver that is told the rules of docs/model.md and nothing of our code.
 *
 * <p>A {@link org.potlife.outside.BareShop} leaves out what the textbook leaves out: presses are
 * always staffed, a piece takes a minute, there are no screens, set-ups, inks or limits of the
 * dryer unless a test adds them.
 */
package org.potlife.outside;
