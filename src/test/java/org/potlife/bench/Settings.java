package org.potlife.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

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

  /** Whether our searches are timed by what the thread was given instead of by the wall. */
  boolean cpuClock() {
    return "cpu".equals(values.get("clock"));
  }

  Optional<Path> folder() {
    return Optional.ofNullable(values.get("folder")).map(Path::of);
  }

  Path out() {
    return Path.of(values.getOrDefault("out", "target/bench"));
  }
}
