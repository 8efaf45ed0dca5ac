/**
 * Belt dryers: how fast the belt may turn, how many garments it takes, and whether its heat
 * suffices.
 *
 * <p>Three limits act at every moment, and the tightest one rules:
 *
 * <ul>
 *   <li><em>dwell</em> (R14): the garment stays in the heated tunnel at least as long as its ink
 *       asks, which bounds the belt's speed;
 *   <li><em>area</em> (R15): all presses that feed the belt share its length; a slow product slows
 *       the belt for all of them;
 *   <li><em>heat</em> (R16): the water in the print and the cloth's own moisture have to be warmed
 *       and evaporated. In a cotton garment the cloth often holds more water than the print.
 * </ul>
 *
 * <p>{@link org.potlife.dryer.Belt} has the first two, {@link org.potlife.dryer.Evaporation} the
 * third. Both are plain arithmetic; {@link org.potlife.dryer.Dryer} describes a dryer of the plant.
 * A set-point is confirmed by probe and wash test, not by this calculation.
 */
package org.potlife.dryer;
