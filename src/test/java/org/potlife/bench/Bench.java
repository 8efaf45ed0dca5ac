package org.potlife.bench;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Measures the planning engine and writes tables and plots, see docs/benchmarks.md. Takes names of
 * parts and settings as {@code key=value}.
 */
public final class Bench {

  /** Something that is measured. */
  interface Part {
    void measure(Settings settings, Report report) throws Exception;
  }

  private static final Map<String, Part> PARTS = parts();

  private Bench() {}

  private static Map<String, Part> parts() {
    Map<String, Part> parts = new LinkedHashMap<>();
    parts.put("small", AgainstProof::small);
    parts.put("reduced", AgainstProof::reduced);
    parts.put("dispatch", AgainstDispatch::overTime);
    parts.put("first", AgainstDispatch::firstPlan);
    parts.put("spread", AgainstDispatch::spread);
    parts.put("wt40", AgainstPublished::wt40);
    parts.put("jobshop", AgainstPublished::jobShops);
    parts.put("setups", AgainstPublished::setUps);
    parts.put("replan", Replanning::measure);
    parts.put("questions", Questions::measure);
    parts.put("growth", Growth::perMove);
    parts.put("memory", Growth::memory);
    parts.put("jmh", MoveBenchmark::measure);
    return parts;
  }

  public static void main(String[] arguments) throws Exception {
    Settings settings = Settings.of(String.join(" ", arguments).trim().split("\\s+"));
    Report report = new Report(settings.out());
    for (String part : settings.parts()) {
      if (!PARTS.containsKey(part)) {
        System.out.println(
            """
            parts: %s
            settings, as key=value: seconds, seeds, instances, sizes (comma between), reference
            (seconds of CP-SAT), dryer (tight or roomy), folder (published instances), out, clock (wall or cpu),
            threads (searches of ours side by side)"""
                .formatted(String.join(" ", PARTS.keySet())));
        return;
      }
    }
    for (String part : settings.parts()) {
      PARTS.get(part).measure(settings, report);
    }
  }
}
