package org.potlife.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.potlife.simulation.Problem;
import org.potlife.simulation.Simulation;

/**
 * Another plan as a start for the next one: its runs keep press and order, and each new run goes
 * where the simulation likes it best. A change of plan costs (R22), so the next plan should not
 * begin with a blank sheet but with the published one.
 */
final class RunningPlan {

  /** More trial places than this, and the remaining new runs go to the end of the shortest line. */
  private static final int MOST_TRIALS = 3000;

  private final Problem problem;
  private final LineUp other;
  private final Simulation simulation;
  private final List<List<Integer>> lines = new ArrayList<>();
  private int trials;

  private RunningPlan(Problem problem, LineUp other) {
    this.problem = problem;
    this.other = other;
    simulation = new Simulation(problem);
  }

  /** Empty when no run of the problem is in the other plan. */
  static Optional<Dispatch.Plan> of(Problem problem, LineUp other) {
    return new RunningPlan(problem, other).plan();
  }

  private Optional<Dispatch.Plan> plan() {
    for (int press = 0; press < problem.presses().length; press++) {
      lines.add(new ArrayList<>());
    }
    List<Integer> fresh = new ArrayList<>();
    boolean displaced = false;
    for (int run = 0; run < problem.movable(); run++) {
      int press = other.press()[run];
      if (press >= 0 && problem.runs()[run].presses()[press]) {
        lines.get(press).add(run);
      } else {
        fresh.add(run);
        displaced |= press == Problem.DISPLACED;
      }
    }
    if (fresh.size() == problem.movable() && !displaced) {
      return Optional.empty();
    }
    lines.forEach(line -> line.sort(Comparator.comparingInt(r -> other.start()[r])));
    fresh.sort(
        Comparator.comparingInt(run -> problem.orders()[problem.runs()[run].order()].dueAt()));
    fresh.forEach(this::insert);
    return Optional.of(judged());
  }

  private void insert(int run) {
    Dispatch.Plan best = null;
    int bestPress = shortestLine(run);
    int bestPlace = lines.get(bestPress).size();
    for (int press = 0; press < lines.size() && trials < MOST_TRIALS; press++) {
      List<Integer> line = lines.get(press);
      for (int place = 0; place <= line.size() && problem.runs()[run].presses()[press]; place++) {
        line.add(place, run);
        Dispatch.Plan tried = judged();
        line.remove(place);
        trials++;
        if (best == null || tried.outcome().compareTo(best.outcome()) < 0) {
          best = tried;
          bestPress = press;
          bestPlace = place;
        }
      }
    }
    lines.get(bestPress).add(bestPlace, run);
  }

  private int shortestLine(int run) {
    int shortest = -1;
    for (int press = 0; press < lines.size(); press++) {
      if (problem.runs()[run].presses()[press]
          && (shortest < 0 || lines.get(press).size() < lines.get(shortest).size())) {
        shortest = press;
      }
    }
    return shortest;
  }

  private Dispatch.Plan judged() {
    return Dispatch.judged(lines, problem, simulation);
  }
}
