package org.potlife.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongSupplier;
import org.potlife.audit.Audit;
import org.potlife.planning.BareSearch;
import org.potlife.planning.BareSearch.Found;
import org.potlife.planning.BareSearch.Timed;
import org.potlife.planning.PlanRequest;
import org.potlife.planning.SearchPlanner;
import org.potlife.planning.SolveWatch;
import org.potlife.simulation.Problem;

/** The full model: plans against the best of the published dispatch rules. */
final class AgainstDispatch {

  private AgainstDispatch() {}

  /** Weighted late minutes after 1, 10 and 30 s against the best of 16 ATCS rules. */
  static void overTime(Settings settings, Report report) {
    double seconds = settings.seconds("seconds", 30);
    Table table =
        new Table(
            "Full model: weighted late minutes, medians over %d seeds".formatted(settings.seeds()),
            "runs",
            "instance",
            "by due date",
            "best of 16 ATCS",
            "our dispatch rules",
            "1 s",
            "10 s",
            "%s s".formatted(seconds),
            "ratio 10 s",
            "ratio %s s".formatted(seconds),
            "moves/s");
    for (int size : settings.sizes(40, 150, 500, 1000)) {
      List<Double> ten = new ArrayList<>();
      List<Double> end = new ArrayList<>();
      for (int instance = 1; instance <= settings.instances(); instance++) {
        Problem problem = BareSearch.problem(BenchPlant.request(size, instance, 0));
        Found atcs = BareSearch.byAtcs(problem);
        Found start = BareSearch.dispatched(problem);
        List<Timed> runs = new ArrayList<>();
        for (int seed = 1; seed <= settings.seeds(); seed++) {
          runs.add(BareSearch.timed(problem, start, seed, settings.allowed(seconds)));
        }
        double reference = AgainstProof.late(atcs);
        ten.add(Figures.ratio(after(runs, 10), reference));
        end.add(Figures.ratio(after(runs, seconds), reference));
        table.add(
            size,
            instance,
            AgainstProof.late(BareSearch.earliestDueDate(problem)),
            reference,
            AgainstProof.late(start),
            after(runs, 1),
            after(runs, 10),
            after(runs, seconds),
            ten.get(ten.size() - 1),
            end.get(end.size() - 1),
            runs.stream().mapToLong(Timed::evaluations).sum() / seconds / runs.size());
        report.say(table.markdown());
        if (instance == 1) {
          plot(report, size, reference, runs);
        }
      }
      table.note(
          "%d runs: median ratio %.3f after 10 s, %.3f after %s s."
              .formatted(size, Figures.median(ten), Figures.median(end), seconds));
    }
    report.table("dispatch", table);
  }

  private static double after(List<Timed> runs, double seconds) {
    return Figures.median(
        runs.stream().map(run -> (double) run.after(seconds).weightedLateMinutes()).toList());
  }

  private static void plot(Report report, int size, double reference, List<Timed> runs) {
    Plot plot = new Plot(size + " runs, full model", "weighted late minutes, best of 16 ATCS = 1");
    plot.line("best of 16 ATCS", List.of(new double[] {0.01, 1}));
    for (int i = 0; i < Math.min(3, runs.size()); i++) {
      plot.line("Potlife, seed " + (i + 1), Curves.late(runs.get(i), Math.max(1, reference)));
    }
    report.plot("dispatch-" + size, plot);
  }

  /** Milliseconds from the built problem to the first plan, and the audit of its sheet. */
  static void firstPlan(Settings settings, Report report) {
    Table table =
        new Table(
            "The first plan",
            "runs",
            "instance",
            "first plan ms",
            "to the written sheet ms",
            "findings of the audit");
    LongSupplier clock = settings.clock();
    for (int size : settings.sizes(150, 500, 1000)) {
      for (int instance = 1; instance <= settings.instances(); instance++) {
        PlanRequest request = BenchPlant.request(size, instance, 0);
        Problem problem = BareSearch.problem(request);
        long begun = clock.getAsLong();
        BareSearch.started(problem);
        double first = (clock.getAsLong() - begun) / 1e6;
        begun = clock.getAsLong();
        var sheet = new SearchPlanner().solve(request, SolveWatch.none());
        double written = (clock.getAsLong() - begun) / 1e6;
        var audit = Audit.of(request.shop(), request.orders(), sheet, request.published());
        table.add(size, instance, first, written, audit.findings().size());
      }
    }
    table.note("The first row is a cold machine's.");
    report.table("first", table);
  }

  /** Spread of the final cost over seeds. */
  static void spread(Settings settings, Report report) {
    double seconds = settings.seconds("seconds", 30);
    int seeds = settings.number("seeds", 10);
    Table table =
        new Table(
            "Spread over %d seeds after %s s".formatted(seeds, seconds),
            "runs",
            "instance",
            "mean of weighted late minutes",
            "std/mean %",
            "mean of cost",
            "std/mean of cost %",
            "std/mean against the dispatched plan %");
    for (int size : settings.sizes(40, 150, 500)) {
      for (int instance = 1; instance <= settings.instances(); instance++) {
        Problem problem = BareSearch.problem(BenchPlant.request(size, instance, 0));
        Found start = BareSearch.dispatched(problem);
        List<Double> late = new ArrayList<>();
        List<Double> cost = new ArrayList<>();
        for (int seed = 1; seed <= seeds; seed++) {
          Found found = BareSearch.timed(problem, start, seed, settings.allowed(seconds)).found();
          late.add((double) found.outcome().weightedLateMinutes());
          cost.add(found.outcome().costMilli() / 1000.0);
        }
        table.add(
            size,
            instance,
            Figures.mean(late),
            100 * Figures.spread(late),
            Figures.mean(cost),
            100 * Figures.spread(cost),
            100
                * Figures.spread(late)
                * Figures.mean(late)
                / Math.max(1, AgainstProof.late(start)));
        report.say(table.markdown());
      }
    }
    report.table("spread", table);
  }
}
