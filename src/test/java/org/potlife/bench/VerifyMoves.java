package org.potlife.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.BiFunction;
import org.potlife.planning.BareSearch;
import org.potlife.planning.BareSearch.Found;
import org.potlife.simulation.DryerEvaluator;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;
import org.potlife.simulation.RunTimes;
import org.potlife.simulation.SequenceEvaluator;
import org.potlife.simulation.Simulation;

/**
 * What a move costs and whether it is scored right: {@code VerifyMoves <runs> <moves> [rehearsed]
 * [verify]}. Moves are accepted as a search at work accepts them: all that are no worse, and some
 * that are. With {@code rehearsed} the rooms do as they do for the first plan, as while a search
 * rehearses; else the whole shop is simulated. With {@code verify} each move is compared with a
 * simulation from the start of the same, and nothing is timed.
 */
public final class VerifyMoves {

  private static final int WORSE_ACCEPTED_1_IN = 50;

  /** What judges moves. */
  private interface Judge {

    Outcome evaluate(int[][] sequences, int[] lengths);

    Outcome evaluateAsBase(int[][] sequences, int[] lengths);

    RunTimes times();
  }

  private final Problem problem;
  private final Found start;
  private final boolean rehearsed;
  private long accepted;

  /** Allocated in the second half of the moves: the first one lets the books grow. */
  private long bytes;

  private VerifyMoves(Problem problem, boolean rehearsed) {
    this.problem = problem;
    this.rehearsed = rehearsed;
    start = BareSearch.dispatched(problem);
  }

  public static void main(String[] arguments) {
    int runs = Integer.parseInt(arguments[0]);
    int moves = Integer.parseInt(arguments[1]);
    List<String> wishes = Arrays.asList(arguments).subList(2, arguments.length);
    Problem problem = BareSearch.problem(BenchPlant.request(runs, 1, 0));
    VerifyMoves bench = new VerifyMoves(problem, wishes.contains("rehearsed"));
    if (wishes.contains("verify")) {
      bench.search(moves, true);
      System.out.printf("%d runs: %d moves verified%n", runs, moves);
      return;
    }
    double fullUs = bench.fullUs(Math.max(300, 300_000 / runs));
    bench.search(moves / 4, false);
    bench.accepted = 0;
    long begun = cpuNs();
    bench.search(moves, false);
    double moveUs = (cpuNs() - begun) / 1000.0 / moves;
    System.out.printf(
        "%d runs: full %.1f us, move %.1f us, ratio %.2f, accepted %.1f %%, %.1f bytes per move%n",
        bench.problem.movable(),
        fullUs,
        moveUs,
        fullUs / moveUs,
        100.0 * bench.accepted / moves,
        2.0 * bench.bytes / moves);
  }

  /** Processor time of this thread: other work on the machine does not count. */
  private static long cpuNs() {
    return java.lang.management.ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static long allocated() {
    return ((com.sun.management.ThreadMXBean)
            java.lang.management.ManagementFactory.getThreadMXBean())
        .getCurrentThreadAllocatedBytes();
  }

  private double fullUs(int times) {
    Simulation simulation = new Simulation(rehearsed ? problem.withoutInk() : problem);
    if (rehearsed) {
      simulation.giveScreens(screensReady());
    }
    long begun = 0;
    for (int i = 0; i < 2 * times; i++) {
      if (i == times) {
        begun = cpuNs();
      }
      simulation.run(start.sequences(), start.lengths(), null);
    }
    return (cpuNs() - begun) / 1000.0 / times;
  }

  private int[] screensReady() {
    SequenceEvaluator shop = new SequenceEvaluator(problem, false);
    shop.evaluateAsBase(start.sequences(), start.lengths());
    return shop.screensReady();
  }

  private Judge judge(boolean verify) {
    if (!rehearsed) {
      SequenceEvaluator shop = new SequenceEvaluator(problem, verify);
      return judge(shop::evaluate, shop::evaluateAsBase, shop);
    }
    DryerEvaluator presses = new DryerEvaluator(problem.withoutInk(), verify);
    presses.giveScreens(screensReady());
    return judge(presses::evaluate, presses::evaluateAsBase, presses);
  }

  private static Judge judge(
      BiFunction<int[][], int[], Outcome> evaluate,
      BiFunction<int[][], int[], Outcome> asBase,
      RunTimes times) {
    return new Judge() {
      @Override
      public Outcome evaluate(int[][] sequences, int[] lengths) {
        return evaluate.apply(sequences, lengths);
      }

      @Override
      public Outcome evaluateAsBase(int[][] sequences, int[] lengths) {
        return asBase.apply(sequences, lengths);
      }

      @Override
      public RunTimes times() {
        return times;
      }
    };
  }

  private void search(int moves, boolean verify) {
    int[][] sequences = Arrays.stream(start.sequences()).map(int[]::clone).toArray(int[][]::new);
    int[] lengths = start.lengths().clone();
    Judge evaluator = judge(verify);
    Random random = new Random(1);
    ArrayMoves trial = new ArrayMoves(problem, evaluator.times(), sequences, lengths, random);
    Outcome current = evaluator.evaluateAsBase(sequences, lengths);
    for (int i = 0; i < moves; i++) {
      if (i == moves / 2) {
        bytes = -allocated();
      }
      trial.move();
      Outcome outcome = evaluator.evaluate(sequences, lengths);
      if (outcome.compareTo(current) <= 0 || random.nextInt(WORSE_ACCEPTED_1_IN) == 0) {
        current = evaluator.evaluateAsBase(sequences, lengths);
        accepted++;
      } else {
        trial.undo();
      }
    }
    bytes += allocated();
  }
}
