package org.potlife.outside;

import java.util.ArrayList;
import java.util.List;
import org.potlife.planning.BareSearch.Found;
import org.potlife.simulation.Problem;
import org.potlife.simulation.Simulation;
import org.potlife.simulation.Trace;

/** Runs given sequences through the simulation, and lists all sequences there are. */
final class Plans {

  private final Problem problem;
  private final Simulation simulation;

  Plans(Problem problem) {
    this.problem = problem;
    simulation = new Simulation(problem);
  }

  /** What the sequences come to, one for each press. */
  Found of(int[]... byPress) {
    int[][] sequences = new int[byPress.length][problem.movable()];
    int[] lengths = new int[byPress.length];
    for (int press = 0; press < byPress.length; press++) {
      lengths[press] = byPress[press].length;
      System.arraycopy(byPress[press], 0, sequences[press], 0, lengths[press]);
    }
    return new Found(sequences, lengths, simulation.run(sequences, lengths, null));
  }

  /** Minutes by which each order is late; negative when it is early. */
  int[] latenessMinutes(int[] sequence) {
    Trace trace = new Trace();
    simulation.run(new int[][] {sequence}, new int[] {sequence.length}, trace);
    int[] lateness = new int[problem.orders().length];
    for (Trace.Placed placed : trace.placed()) {
      int order = problem.runs()[placed.run()].order();
      lateness[order] = (placed.off() - problem.orders()[order].dueAt()) / 60;
    }
    return lateness;
  }

  /** All orders of 0 to n - 1. */
  static List<int[]> permutations(int n) {
    List<int[]> all = new ArrayList<>();
    extend(new int[n], 0, new boolean[n], all);
    return all;
  }

  private static void extend(int[] permutation, int length, boolean[] used, List<int[]> all) {
    if (length == permutation.length) {
      all.add(permutation.clone());
    }
    for (int next = 0; next < permutation.length; next++) {
      if (!used[next]) {
        used[next] = true;
        permutation[length] = next;
        extend(permutation, length + 1, used, all);
        used[next] = false;
      }
    }
  }
}
