package org.potlife.bench;

import java.util.ArrayList;
import java.util.List;
import org.potlife.bench.Published.Instance;
import org.potlife.planning.BareSearch.Found;

/** Published instances with their optimum or best known value. */
final class AgainstPublished {

  private static final long[] BEST_OF_SET_UPS = {453, 4794, 1390, 5866, 4054};

  private AgainstPublished() {}

  private static Published folder(Settings settings) {
    return new Published(
        settings
            .folder()
            .orElseThrow(
                () -> new IllegalArgumentException("folder=... with the published instances")));
  }

  /** All of wt40, one run each. */
  static void wt40(Settings settings, Report report) {
    double seconds = settings.seconds("seconds", 1);
    List<Instance> all = folder(settings).wt40();
    int wanted = settings.number("instances", all.size());
    int seeds = settings.number("seeds", 1);
    Table table =
        new Table(
            "OR-Library wt40, %s s each".formatted(seconds),
            "seed",
            "instances",
            "optimal",
            "worst above %",
            "not optimal");
    for (int seed = 1; seed <= seeds; seed++) {
      int optimal = 0;
      double worst = 0;
      List<String> missed = new ArrayList<>();
      for (Instance instance : all.subList(0, wanted)) {
        long found = found(instance, seed, seconds, settings);
        optimal += found == instance.best() ? 1 : 0;
        worst = Math.max(worst, 100 * (Figures.ratio(found, instance.best()) - 1));
        if (found != instance.best()) {
          missed.add("%s %d/%d".formatted(instance.name(), found, instance.best()));
        }
      }
      table.add(seed, wanted, optimal, worst, String.join(", ", missed));
    }
    report.table("wt40", table);
  }

  /** Job shops. */
  static void jobShops(Settings settings, Report report) {
    double seconds = settings.seconds("seconds", 20);
    Published folder = folder(settings);
    List<Instance> instances =
        List.of(
            folder.jobShop("ft06", 55),
            folder.jobShop("ft10", 930),
            folder.jobShop("la01", 666),
            folder.jobShop("la02", 655),
            folder.jobShop("la03", 597),
            folder.jobShop("la04", 590),
            folder.jobShop("la05", 593));
    compare("jobshop", "Job shops, makespan", instances, seconds, settings, report);
  }

  /** Single machine, set-ups by sequence. */
  static void setUps(Settings settings, Report report) {
    double seconds = settings.seconds("seconds", 10);
    Published folder = folder(settings);
    List<Instance> instances = new ArrayList<>();
    for (int i = 0; i < Math.min(settings.instances(), BEST_OF_SET_UPS.length); i++) {
      instances.add(folder.setUps(i + 1, BEST_OF_SET_UPS[i]));
    }
    compare(
        "setups",
        "Single machine with set-ups by sequence, weighted tardiness",
        instances,
        seconds,
        settings,
        report);
  }

  private static void compare(
      String name,
      String title,
      List<Instance> instances,
      double seconds,
      Settings settings,
      Report report) {
    Table table =
        new Table(
            "%s, %s s, %d seeds".formatted(title, seconds, settings.seeds()),
            "instance",
            "best known",
            "best",
            "median",
            "median ratio");
    for (Instance instance : instances) {
      List<Double> found = new ArrayList<>();
      for (int seed = 1; seed <= settings.seeds(); seed++) {
        found.add((double) found(instance, seed, seconds, settings));
      }
      double median = Figures.median(found);
      table.add(
          instance.name(),
          instance.best(),
          found.stream().min(Double::compare).orElseThrow(),
          median,
          median / instance.best());
    }
    report.table(name, table);
  }

  private static long found(Instance instance, int seed, double seconds, Settings settings) {
    Found found = AgainstProof.search(instance.problem(), seed, seconds, settings).found();
    return instance.makespan() ? found.outcome().costMilli() : AgainstProof.late(found);
  }
}
