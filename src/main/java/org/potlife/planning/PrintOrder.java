package org.potlife.planning;

import java.util.ArrayList;
import java.util.List;
import org.potlife.simulation.Problem;

/**
 * Which runs one press prints before which others. A press works along its line, so it is enough
 * that every line a plan is made from has them in that order.
 */
final class PrintOrder {

  private final int[][] pairs;

  PrintOrder(Problem problem) {
    pairs = problem.inOrder();
  }

  /** Whether every order is as good as any other. */
  boolean isFree() {
    return pairs.length == 0;
  }

  /** Whether the lines have all pairs in order. */
  boolean isKept(Lines lines) {
    for (int[] pair : pairs) {
      if (lines.pressOf(pair[0]) == lines.pressOf(pair[1])
          && lines.placeOf(pair[0]) > lines.placeOf(pair[1])) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether nothing that comes before a run is still to be placed.
   *
   * @param done by run, whether it is placed
   */
  boolean isOpen(int run, boolean[] done) {
    for (int[] pair : pairs) {
      if (pair[1] == run && !done[pair[0]]) {
        return false;
      }
    }
    return true;
  }

  /** The line with each run brought forward that stands behind one it comes before. */
  List<Integer> inOrder(List<Integer> line) {
    if (isFree()) {
      return line;
    }
    List<Integer> ordered = new ArrayList<>(line.size());
    line.forEach(run -> add(run, line, ordered));
    return ordered;
  }

  private void add(int run, List<Integer> line, List<Integer> ordered) {
    if (ordered.contains(run)) {
      return;
    }
    for (int[] pair : pairs) {
      if (pair[1] == run && line.contains(pair[0])) {
        add(pair[0], line, ordered);
      }
    }
    ordered.add(run);
  }
}
