package org.potlife.simulation;

/**
 * A set of screens that goes from press to press as one.
 *
 * @param screens screens in the set
 * @param toMake screens that are worked on together; the others are there or come by themselves
 * @param meshes mesh of each screen that takes a frame, index into the frame stocks
 * @param heldMeshes mesh of each screen that has its frame already and gives it back
 * @param readyAt -1 if it is made within the plan; else when the whole set is ready, s
 * @param runs runs of the plan that use it
 * @param fromStage number of the stage with which the making goes on, 0 to 8; 0 from the start
 * @param notBefore from a later stage on: when it can begin; from the start: when those screens are
 *     ready that are not made, s
 */
public record ScreenSetSpec(
    int screens,
    int toMake,
    int[] meshes,
    int[] heldMeshes,
    int readyAt,
    int runs,
    int fromStage,
    int notBefore) {}
