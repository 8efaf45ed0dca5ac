/**
 * Inks: what a print takes of them, what goes into a bucket, and how long it lives.
 *
 * <p>The path from artwork to bucket, each step a small class without state:
 *
 * <ol>
 *   <li>{@link org.potlife.ink.Mesh}: the screen's mesh gives the height of the wet ink film;
 *   <li>{@link org.potlife.ink.PrintMass}: film, image and coverage give grams per piece and per
 *       run;
 *   <li>{@link org.potlife.ink.RecipeMass}: a batch's mass gives whole grams of every component and
 *       of the agent.
 * </ol>
 *
 * <p>The estimate of the film is rough, models of it disagree. So an ink carries a transfer factor,
 * and a plant that weighs a garment before and after the print enters the grams themselves ({@code
 * measuredG} of a colour), which replaces the first two steps.
 *
 * <p>{@link org.potlife.ink.Ink} and {@link org.potlife.ink.InkSystem} hold what a plant knows of
 * its inks, {@link org.potlife.ink.InkRoom} who mixes them and when. Only discharge inks take an
 * agent; with it a clock starts, the pot life, and the ink never goes back to stock (R9 to R13 in
 * docs/model.md).
 */
package org.potlife.ink;
