package org.potlife.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryType;
import java.util.ArrayList;
import java.util.List;
import org.potlife.planning.BareSearch;
import org.potlife.planning.BareSearch.Timed;
import org.potlife.planning.PlanRequest;
import org.potlife.planning.SolveWatch;
import org.potlife.simulation.Problem;
import org.potlife.simulation.Simulation;

/** How time and memory grow with the number of runs. */
final class Growth {

  private Growth() {}

  /** Microseconds per simulated move and per full simulation. */
  static void perMove(Settings settings, Report report) {
    double seconds = settings.seconds("seconds", 10);
    Table table =
        new Table(
            "Time per move of the search",
            "runs",
            "moves/s",
            "us per move",
            "us per full simulation",
            "full / move");
    List<Double> sizes = new ArrayList<>();
    List<Double> times = new ArrayList<>();
    for (int size : settings.sizes(50, 100, 200, 500, 1000, 2000)) {
      Problem problem = BareSearch.problem(BenchPlant.request(size, 1, 0));
      var start = BareSearch.dispatched(problem);
      Timed timed = BareSearch.timed(problem, start, 1, settings.allowed(seconds));
      double move = seconds * 1e6 / timed.evaluations();
      double full = full(problem, start, seconds / 4);
      sizes.add((double) size);
      times.add(move);
      table.add(size, timed.evaluations() / seconds, move, full, full / move);
    }
    if (sizes.size() > 1) {
      table.note("Time per move grows with the power %.2f.".formatted(Figures.power(sizes, times)));
    }
    report.table("growth", table);
  }

  private static double full(Problem problem, BareSearch.Found plan, double seconds) {
    Simulation simulation = new Simulation(problem);
    long begun = System.nanoTime();
    int count = 0;
    while (System.nanoTime() - begun < seconds * 1e9) {
      simulation.run(plan.sequences(), plan.lengths(), null);
      count++;
    }
    return (System.nanoTime() - begun) / 1e3 / count;
  }

  /** Most heap in use during a solve; give the heap with -Dbench.heap. */
  static void memory(Settings settings, Report report) {
    Table table =
        new Table(
            "Memory", "runs", "heap limit MB", "most in use MB", "in use after collection MB");
    int seconds = (int) settings.seconds("seconds", 10);
    for (int size : settings.sizes(2000)) {
      var pools =
          ManagementFactory.getMemoryPoolMXBeans().stream()
              .filter(pool -> pool.getType() == MemoryType.HEAP)
              .toList();
      pools.forEach(java.lang.management.MemoryPoolMXBean::resetPeakUsage);
      PlanRequest request = BenchPlant.request(size, 1, seconds);
      var sheet = settings.planner().solve(request, SolveWatch.none());
      long most = pools.stream().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum();
      long after =
          pools.stream()
              .filter(pool -> pool.getCollectionUsage() != null)
              .mapToLong(pool -> pool.getCollectionUsage().getUsed())
              .sum();
      table.add(
          sheet.runs().size(), Runtime.getRuntime().maxMemory() >> 20, most >> 20, after >> 20);
    }
    report.table("memory", table);
  }
}
