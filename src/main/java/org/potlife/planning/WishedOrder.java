package org.potlife.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.potlife.planning.Instructions.RunWish;
import org.potlife.simulation.RunSpec;

/**
 * The planner's wishes that one run is printed before another, as far as the shop can follow: both
 * are still to be placed, both go on the press that is named, and neither another wish nor the
 * listed order of the prints on the same garments (R17) asks for the opposite. Others are passed
 * over.
 */
final class WishedOrder {

  private final RunSpec[] specs;
  private final Map<Integer, Set<Integer>> followers = new HashMap<>();

  private WishedOrder(RunSpec[] specs, int movable) {
    this.specs = specs;
    for (int first = 0; first < movable; first++) {
      for (int later = 0; later < movable && specs[first].stage() >= 0; later++) {
        if (specs[first].garmentLot() == specs[later].garmentLot()
            && specs[first].stage() < specs[later].stage()) {
          follow(first, later);
        }
      }
    }
  }

  /**
   * Pairs of runs, the first before the second.
   *
   * @param runs those below {@code movable} are still to be placed
   */
  static int[][] pairs(
      Instructions instructions, List<PlannedRun> runs, RunSpec[] specs, int movable) {
    List<RunWish> wishes =
        instructions.runs().stream().filter(wish -> wish.before() != null).toList();
    if (wishes.isEmpty()) {
      return new int[0][];
    }
    Map<String, Integer> index = new HashMap<>();
    for (int run = 0; run < movable; run++) {
      index.put(runs.get(run).id(), run);
    }
    WishedOrder order = new WishedOrder(specs, movable);
    List<int[]> pairs = new ArrayList<>();
    for (RunWish wish : wishes) {
      Integer first = index.get(wish.run());
      Integer later = index.get(wish.before());
      if (first != null && later != null && order.canFollow(first, later)) {
        order.follow(first, later);
        pairs.add(new int[] {first, later});
      }
    }
    return pairs.toArray(int[][]::new);
  }

  private boolean canFollow(int first, int later) {
    boolean[] press = specs[first].presses();
    return first != later
        && isOne(press)
        && Arrays.equals(press, specs[later].presses())
        && !reaches(later, first, new HashSet<>());
  }

  private static boolean isOne(boolean[] presses) {
    int count = 0;
    for (boolean press : presses) {
      count += press ? 1 : 0;
    }
    return count == 1;
  }

  private boolean reaches(int from, int to, Set<Integer> seen) {
    return from == to
        || (seen.add(from)
            && followers.getOrDefault(from, Set.of()).stream()
                .anyMatch(next -> reaches(next, to, seen)));
  }

  private void follow(int first, int later) {
    followers.computeIfAbsent(first, run -> new HashSet<>()).add(later);
  }
}
