package org.potlife.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.potlife.simulation.DryerEvaluator;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;
import org.potlife.simulation.SequenceEvaluator;
import org.potlife.simulation.Simulation;

/**
 * Another plan as a start for the next one: its runs keep press and order, and each new run goes
 * where the simulation likes it best. A change of plan costs (R22), so the next plan should not
 * begin with a blank sheet but with the published one.
 */
final class RunningPlan {

  /**
   * More trial places than this, and the remaining new runs go to the end of the shortest line. At
   * 500 runs a place takes some 0.4 ms.
   */
  private static final int MOST_TRIALS = 20_000;

  /** Of all places for a run, so many are simulated with the whole shop. */
  private static final int SIMULATED_PLACES = 12;

  private final Problem problem;
  private final LineUp other;
  private final SequenceEvaluator shop;
  private final DryerEvaluator presses;
  private final List<List<Integer>> lines = new ArrayList<>();
  private int trials;

  private RunningPlan(Problem problem, LineUp other) {
    this.problem = problem;
    this.other = other;
    shop = new SequenceEvaluator(problem, false);
    presses = new DryerEvaluator(problem.withoutInk(), false);
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
    int shortest = shortestLine(run);
    Place best = new Place(shortest, lines.get(shortest).size());
    if (trials < MOST_TRIALS) {
      Map<Place, Outcome> rehearsed = rehearsed(run);
      shop.evaluateAsBase(sequences(), lengths());
      best =
          rehearsed.keySet().stream()
              .sorted(Comparator.comparing(rehearsed::get))
              .limit(SIMULATED_PLACES)
              .min(Comparator.comparing(place -> with(run, place, shop::evaluate)))
              .orElse(best);
    }
    lines.get(best.press).add(best.place, run);
  }

  /** A place in the line of a press. */
  private record Place(int press, int place) {}

  /**
   * What the plan comes to with a run at each place if the screens of the others are ready as they
   * were, its own as if it came first of all, and nobody waits for ink.
   */
  private Map<Place, Outcome> rehearsed(int run) {
    List<Place> places = new ArrayList<>();
    for (int press = 0; press < lines.size(); press++) {
      for (int place = 0; place <= lines.get(press).size(); place++) {
        if (problem.runs()[run].presses()[press]) {
          places.add(new Place(press, place));
        }
      }
    }
    trials += places.size();
    with(run, places.get(0), shop::evaluateAsBase);
    int[] first = shop.screensReady();
    shop.evaluateAsBase(sequences(), lengths());
    int[] ready = shop.screensReady();
    int set = problem.runs()[run].screenSet();
    if (set >= 0 && ready[set] < 0) {
      ready[set] = first[set];
    }
    presses.giveScreens(ready);
    presses.evaluateAsBase(sequences(), lengths());
    Map<Place, Outcome> outcomes = new LinkedHashMap<>();
    places.forEach(place -> outcomes.put(place, with(run, place, presses::evaluate)));
    return outcomes;
  }

  private Outcome with(int run, Place place, BiFunction<int[][], int[], Outcome> judge) {
    List<Integer> line = lines.get(place.press);
    line.add(place.place, run);
    Outcome outcome = judge.apply(sequences(), lengths());
    line.remove(place.place);
    return outcome;
  }

  private int[][] sequences() {
    return Dispatch.sequences(lines, problem);
  }

  private int[] lengths() {
    return lines.stream().mapToInt(List::size).toArray();
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
    return Dispatch.judged(lines, problem, new Simulation(problem));
  }
}
