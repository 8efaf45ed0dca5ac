package org.potlife.simulation;

import java.util.List;

/**
 * What is already under way or frozen when the plan begins (R22), as bookings.
 *
 * @param pressFree by press, when it is free, s
 * @param lotFree by garment lot, when its garments are cool, s; 0 if untouched
 * @param lotStage by garment lot, prints of it that are done
 * @param orderEnd by order, when its taken-over runs are off the belt, s; -1 if none
 * @param setFree by screen set, when taken-over runs release it, s; 0 if none
 * @param setPress by screen set, the press it was on last; -1 if none
 * @param belts loads on the dryers
 * @param tails last goods of taken-over runs, which must come off the belt when promised
 * @param mixing busy times of the mixers
 * @param hands busy times of the screen room's places
 * @param loads cabinet loads
 * @param frames by mesh, when each frame is free that does not come back with a set of the plan, s,
 *     ascending; empty where nothing is held
 * @param batches batches that are made or as good as made, in order of their ids from 0
 */
public record TakenOver(
    int[] pressFree,
    int[] lotFree,
    int[] lotStage,
    int[] orderEnd,
    int[] setFree,
    int[] setPress,
    List<BeltLoad> belts,
    List<BeltTail> tails,
    List<Busy> mixing,
    List<Busy> hands,
    List<CabinetLoad> loads,
    int[][] frames,
    List<LiveBatch> batches) {

  /** Load on a dryer over a period; units as in {@link RunSpec.BeltFeed}. */
  public record BeltLoad(int dryer, int from, int to, int speedLimit, int area, int heat) {}

  /** The belt carries the last goods off: it may not be slower than this, um/min. */
  public record BeltTail(int dryer, int from, int to, int leastSpeed) {}

  /**
   * A place that is busy.
   *
   * @param kind for hands the ordinal of the place; for mixing 0
   * @param lane which of them, from 0
   */
  public record Busy(int kind, int lane, int from, int to) {}

  /** A load of a cabinet; nothing may be added. */
  public record CabinetLoad(int cabinet, int stage, int from, int to, int frames) {}

  /**
   * A batch that others may draw from within its clock.
   *
   * @param roomG what is left for others, g
   * @param stock whether it stands on the shelf and so serves any day
   */
  public record LiveBatch(
      int ink, int mixFrom, int done, int ready, int useBy, int roomG, int mixer, boolean stock) {}

  /** Nothing is under way. */
  public static TakenOver nothing(int presses, int lots, int orders, int sets) {
    int[] ends = new int[orders];
    java.util.Arrays.fill(ends, -1);
    int[] nowhere = new int[sets];
    java.util.Arrays.fill(nowhere, -1);
    return new TakenOver(
        new int[presses],
        new int[lots],
        new int[lots],
        ends,
        new int[sets],
        nowhere,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        new int[0][],
        List.of());
  }
}
