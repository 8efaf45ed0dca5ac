package org.potlife.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.potlife.outside.CompleteCase;
import org.potlife.outside.ProvenOptimum;
import org.potlife.planning.BareSearch;
import org.potlife.planning.BareSearch.Found;
import org.potlife.planning.BareSearch.Timed;
import org.potlife.simulation.Problem;
import org.potlife.simulation.Simulation;
import org.potlife.simulation.Trace;

/** The reduced model, without ink and screen rooms, against CP-SAT with two workers. */
final class AgainstProof {

  private AgainstProof() {}

  /** How often single short runs reach the proven optimum. */
  static void small(Settings settings, Report report) {
    double seconds = settings.seconds("seconds", 2);
    Table table =
        new Table(
            "Small cases of the reduced model against the proven optimum, %s s".formatted(seconds),
            "runs",
            "proven",
            "single runs",
            "at the optimum",
            "share %",
            "worst above %");
    for (int size : settings.sizes(8, 12, 16)) {
      int proven = 0;
      int tried = 0;
      int equal = 0;
      double worst = 0;
      for (int instance = 1; instance <= settings.instances(); instance++) {
        CompleteCase shop =
            CompleteCase.ofSize(size, size < 12 ? 2 : 3, tightDryer(settings), instance);
        var answer =
            ProvenOptimum.within(shop, settings.seconds("reference", 120), Optional.empty());
        if (!answer.proven()) {
          report.say("no proof for %d runs, instance %d".formatted(size, instance));
          continue;
        }
        proven++;
        long optimum = answer.found().getAsLong();
        for (int seed = 1; seed <= settings.seeds(); seed++) {
          long found = late(search(shop.problem(), seed, seconds, settings).found());
          tried++;
          equal += found == optimum ? 1 : 0;
          worst = Math.max(worst, 100 * (Figures.ratio(found, optimum) - 1));
          report.say(
              "%d/%d seed %d: %d, proven %d".formatted(size, instance, seed, found, optimum));
        }
      }
      table.add(size, proven, tried, equal, 100.0 * equal / Math.max(1, tried), worst);
    }
    report.table("small", table);
  }

  /** Larger cases, where CP-SAT has six times as long. */
  static void reduced(Settings settings, Report report) {
    double seconds = settings.seconds("seconds", 10);
    double reference = settings.seconds("reference", 60);
    Table table =
        new Table(
            "Reduced model: weighted late minutes after %s s against CP-SAT after %s s"
                .formatted(seconds, reference),
            "runs",
            "instance",
            "our dispatch rules",
            "CP-SAT",
            "CP-SAT from the dispatched plan",
            "ours (median)",
            "ratio");
    for (int size : settings.sizes(20, 30, 40, 150)) {
      List<Double> ratios = new ArrayList<>();
      for (int instance = 1; instance <= settings.instances(); instance++) {
        CompleteCase shop =
            CompleteCase.ofSize(size, size <= 60 ? 3 : 6, tightDryer(settings), instance);
        Problem problem = shop.problem();
        Found start = BareSearch.dispatched(problem);
        var plain = ProvenOptimum.within(shop, reference, Optional.empty());
        var hinted = ProvenOptimum.within(shop, reference, Optional.of(trace(problem, start)));
        List<Double> ours = new ArrayList<>();
        List<Timed> runs = new ArrayList<>();
        for (int seed = 1; seed <= settings.seeds(); seed++) {
          runs.add(search(problem, seed, seconds, settings));
          ours.add((double) late(runs.get(seed - 1).found()));
        }
        var best = plain.found().isPresent() ? plain : hinted;
        // a search that finds nothing in this time still has the plan that it was given
        double theirs = best.found().orElse(late(start));
        ratios.add(Figures.ratio(Figures.median(ours), theirs));
        table.add(
            size,
            instance,
            late(start),
            plain.found().isPresent() ? plain.found().getAsLong() : "no plan",
            hinted.found().isPresent() ? hinted.found().getAsLong() : "no plan",
            Figures.median(ours),
            ratios.get(ratios.size() - 1));
        report.say(table.markdown());
        if (instance == 1) {
          plot(report, size, late(start), best, runs.get(0));
        }
      }
      table.note(
          "%d runs: geometric mean of the ratios %.3f."
              .formatted(size, Figures.geometricMean(ratios)));
    }
    table.note("Where CP-SAT finds no plan by itself, the ratio is to its search from ours.");
    report.table("reduced", table);
  }

  private static void plot(
      Report report, int size, long dispatched, ProvenOptimum.Answer reference, Timed ours) {
    Plot plot = new Plot(size + " runs, reduced model", "weighted late minutes, dispatch rule = 1");
    double unit = Math.max(1, dispatched);
    plot.line("our dispatch rules", List.of(new double[] {0.01, 1}));
    plot.line(
        "CP-SAT",
        reference.curve().stream()
            .map(p -> new double[] {p[0], Math.min(2, p[1] / unit)})
            .toList());
    plot.line("Potlife", Curves.late(ours, unit));
    report.plot("reduced-" + size, plot);
  }

  private static boolean tightDryer(Settings settings) {
    return "tight".equals(settings.values().get("dryer"));
  }

  static Timed search(Problem problem, int seed, double seconds, Settings settings) {
    return BareSearch.timed(
        problem, BareSearch.dispatched(problem), seed, settings.allowed(seconds));
  }

  static long late(Found found) {
    if (found.outcome().unplaced() > 0) {
      throw new IllegalStateException("runs without a place: " + found.outcome());
    }
    return found.outcome().weightedLateMinutes();
  }

  private static Trace trace(Problem problem, Found found) {
    Trace trace = new Trace();
    new Simulation(problem).run(found.sequences(), found.lengths(), trace);
    return trace;
  }
}
