package org.potlife.simulation;

/**
 * A set of screens that goes from press to press as one.
 *
 * @param screens screens in the set
 * @param toMake screens that must be made; the others are kept stencils
 * @param meshes mesh of each screen to make, index into the frame stocks
 * @param readyAt -1 if it must be made within the plan; else when the whole set is ready, s
 * @param runs runs of the plan that use it
 */
public record ScreenSetSpec(int screens, int toMake, int[] meshes, int readyAt, int runs) {}
