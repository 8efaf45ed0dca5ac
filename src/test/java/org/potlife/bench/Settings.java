package org.potlife.bench;

import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.LongSupplier;
import org.potlife.planning.BareSearch.Allowed;
import org.potlife.planning.SearchPlanner;

/** What is to be measured: names of parts, and {@code key=value} for all that differs. */
record Settings(List<String> parts, Map<String, String> values) {

  static Settings of(String... words) {
    List<String> parts = new ArrayList<>();
    Map<String, String> values = new TreeMap<>();
    for (String word : words) {
      int at = word.indexOf('=');
      if (at < 0) {
        parts.add(word);
      } else {
        values.put(word.substring(0, at), word.substring(at + 1));
      }
    }
    return new Settings(parts, values);
  }

  int number(String key, int usual) {
    return values.containsKey(key) ? Integer.parseInt(values.get(key)) : usual;
  }

  double seconds(String key, double usual) {
    return values.containsKey(key) ? Double.parseDouble(values.get(key)) : usual;
  }

  List<Integer> sizes(Integer... usual) {
    return values.containsKey("sizes")
        ? Arrays.stream(values.get("sizes").split(",")).map(Integer::valueOf).toList()
        : List.of(usual);
  }

  int instances() {
    return number("instances", 5);
  }

  int seeds() {
    return number("seeds", 5);
  }

  /** A planner with as many searches side by side. */
  SearchPlanner planner() {
    return new SearchPlanner(number("threads", 1));
  }

  /** A clock of nanoseconds: the wall's, or what this thread was given. */
  LongSupplier clock() {
    return isByThread()
        ? ManagementFactory.getThreadMXBean()::getCurrentThreadCpuTime
        : System::nanoTime;
  }

  private boolean isByThread() {
    return "cpu".equals(values.get("clock"));
  }

  /**
   * What a search of ours may use: so many seconds by the wall or of its threads, so many threads.
   */
  Allowed allowed(double seconds) {
    return new Allowed(seconds, isByThread(), number("threads", 1));
  }

  Optional<Path> folder() {
    return Optional.ofNullable(values.get("folder")).map(Path::of);
  }

  Path out() {
    return Path.of(values.getOrDefault("out", "target/bench"));
  }
}
