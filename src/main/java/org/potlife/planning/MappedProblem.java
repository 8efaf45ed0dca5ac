package org.potlife.planning;

import java.util.List;
import org.potlife.ink.StockInk;
import org.potlife.sheet.PlanSheet;
import org.potlife.simulation.Problem;

/**
 * The engine's problem with the way back into the shop's words.
 *
 * @param runs by index, movable runs first, then those taken over
 * @param sets screen sets by index
 * @param unplaced prints that no press takes
 * @param frozen what is taken over from the published plan
 * @param stock containers on the shelf, which the engine knows after the batches of {@code frozen}
 */
record MappedProblem(
    PlanRequest request,
    Horizon horizon,
    Problem problem,
    List<PlannedRun> runs,
    List<ScreenSet> sets,
    List<PlanSheet.UnplacedLine> unplaced,
    Frozen frozen,
    List<StockInk> stock) {}
