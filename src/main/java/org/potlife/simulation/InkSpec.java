package org.potlife.simulation;

/**
 * What the simulation knows of one ink.
 *
 * @param activated whether it takes an agent and so has a pot life
 * @param standS rest between activation and first stroke, s
 * @param potLifeS life from the end of activation, s
 * @param lightness 0 (black) to 100 (white)
 * @param costPerKgMilli price, 1/1000 of the plant currency per kg
 */
public record InkSpec(
    boolean activated, int standS, int potLifeS, double lightness, long costPerKgMilli) {}
