package org.potlife.bench;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.potlife.planning.BareSearch;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;
import org.potlife.simulation.SequenceEvaluator;
import org.potlife.simulation.Simulation;

/** Time and allocation of one swap of neighbours, from the checkpoints and from the start. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class MoveBenchmark {

  /** Runs of the plant. */
  @Param({"150", "500"})
  public int runs;

  private SequenceEvaluator evaluator;
  private Simulation simulation;
  private int[][] sequences;
  private int[] lengths;
  private Random random;

  /** Takes the best dispatch rule's plan as the base. */
  @Setup
  public void dispatch() {
    Problem problem = BareSearch.problem(BenchPlant.request(runs, 1, 0));
    BareSearch.Found start = BareSearch.dispatched(problem);
    evaluator = new SequenceEvaluator(problem, false);
    simulation = new Simulation(problem);
    sequences = start.sequences();
    lengths = start.lengths();
    random = new Random(1);
    evaluator.evaluate(sequences, lengths);
  }

  /** A move that is not kept. */
  @Benchmark
  public Outcome incremental() {
    int press = random.nextInt(lengths.length);
    int place = random.nextInt(lengths[press] - 1);
    swap(sequences[press], place);
    Outcome outcome = evaluator.evaluate(sequences, lengths);
    swap(sequences[press], place);
    return outcome;
  }

  /** The same move, simulated from the start. */
  @Benchmark
  public Outcome full() {
    int press = random.nextInt(lengths.length);
    int place = random.nextInt(lengths[press] - 1);
    swap(sequences[press], place);
    Outcome outcome = simulation.run(sequences, lengths, null);
    swap(sequences[press], place);
    return outcome;
  }

  private static void swap(int[] line, int place) {
    int run = line[place];
    line[place] = line[place + 1];
    line[place + 1] = run;
  }

  static void measure(Settings settings, Report report) throws Exception {
    ChainedOptionsBuilder options =
        new OptionsBuilder()
            .include(MoveBenchmark.class.getSimpleName())
            .addProfiler(GCProfiler.class);
    if (settings.values().containsKey("seconds")) {
      TimeValue time = TimeValue.milliseconds((long) (1000 * settings.seconds("seconds", 3)));
      options.warmupTime(time).measurementTime(time);
    }
    Table table =
        new Table("JMH: one move, with allocation", "benchmark", "runs", "us", "bytes per move");
    for (var result : new Runner(options.build()).run()) {
      var allocated = result.getSecondaryResults().get("gc.alloc.rate.norm");
      table.add(
          result.getParams().getBenchmark().replaceAll(".*\\.", ""),
          result.getParams().getParam("runs"),
          result.getPrimaryResult().getScore(),
          allocated == null ? Double.NaN : allocated.getScore());
    }
    report.table("jmh", table);
  }
}
