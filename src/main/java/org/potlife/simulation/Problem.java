package org.potlife.simulation;

import java.util.Arrays;

/**
 * Everything that stays the same while sequences are tried. Times are whole seconds from the plan's
 * origin. Runs below {@code movable} are sequenced; those from there on are taken over and only
 * serve as predecessors on their presses.
 *
 * @param dayStart starts of the local days, ascending, the first one not after 0
 * @param horizonEnd nothing ends later, s
 * @param publishedStart by run, start in the published plan, s; -1 if none
 * @param publishedPress by run, its press in the published plan; -1 if none, {@link #DISPLACED} if
 *     that is closed now
 * @param measuredSetUpS set-up between runs on any press, s: row 0 from an empty press, row {@code
 *     i + 1} after run {@code i}, columns by the next run; null where they follow from screens and
 *     inks, as in every plan of a shop: the published cases of the benchmark give them as a table
 * @param inOrder pairs of runs that one press prints, the first before the second; whoever makes
 *     sequences keeps to it, the simulation takes them as they are
 */
public record Problem(
    int movable,
    RunSpec[] runs,
    PressSpec[] presses,
    DryerSpec[] dryers,
    InkSpec[] inks,
    ScreenSetSpec[] sets,
    OrderSpec[] orders,
    int lots,
    ScreenRoomSpec screenRoom,
    InkRoomSpec inkRoom,
    CostSpec costs,
    int[] dayStart,
    int horizonEnd,
    int[] publishedStart,
    int[] publishedPress,
    TakenOver takenOver,
    int[][] measuredSetUpS,
    int[][] inOrder) {

  /** Press of a published run that may go anywhere, at no cost of change. */
  public static final int DISPLACED = -2;

  /** The same where every run has its ink when it wants it. */
  public Problem withoutInk() {
    return new Problem(
        movable,
        Arrays.stream(runs).map(RunSpec::withoutInk).toArray(RunSpec[]::new),
        presses,
        dryers,
        inks,
        sets,
        orders,
        lots,
        screenRoom,
        inkRoom,
        costs,
        dayStart,
        horizonEnd,
        publishedStart,
        publishedPress,
        takenOver,
        measuredSetUpS,
        inOrder);
  }
}
