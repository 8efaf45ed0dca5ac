/**
 * What sequences of runs come to in the shop: presses, dryers, ink room and screen room, placed run
 * by run at the earliest moment that all of them allow. Knows no framework, no clock and no
 * database; times are whole seconds from the plan's origin.
 *
 * <p>{@link org.potlife.simulation.Simulation} simulates from the start. {@link
 * org.potlife.simulation.SequenceEvaluator} goes on from checkpoints of a base, {@link
 * org.potlife.simulation.DryerEvaluator} leaves the rooms out and simulates only the dryers that a
 * change gets to; both say the same as a simulation from the start, and can be told to compare.
 */
package org.potlife.simulation;
