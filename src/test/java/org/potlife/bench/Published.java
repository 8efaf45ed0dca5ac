package org.potlife.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.potlife.outside.BareShop;
import org.potlife.simulation.Problem;

/**
 * Published instances, read from a folder that holds them as fetched: {@code wt/wt40.txt} and
 * {@code wtopt40.txt} of OR-Library, {@code jsp/} with job shops in the plain format of OR-Library,
 * {@code wtsds/} with single machines and set-ups by sequence. Minutes of the instance are minutes
 * here.
 */
final class Published {

  private static final int JOBS_OF_WT40 = 40;
  private static final int MINUTE = 60;

  /** An instance with its optimum or the best that is known. */
  record Instance(String name, Problem problem, long best, boolean makespan) {}

  private final Path folder;

  Published(Path folder) {
    this.folder = folder;
  }

  /** Total weighted tardiness, 125 instances: Potts and Van Wassenhove 1985, by J. E. Beasley. */
  List<Instance> wt40() {
    int[] numbers = numbers(read("wt/wt40.txt"));
    int[] optima = numbers(read("wt/wtopt40.txt"));
    List<Instance> instances = new ArrayList<>();
    for (int i = 0; i < numbers.length / (3 * JOBS_OF_WT40); i++) {
      int at = i * 3 * JOBS_OF_WT40;
      BareShop shop = BareShop.presses(1);
      for (int job = at; job < at + JOBS_OF_WT40; job++) {
        int due = numbers[job + 2 * JOBS_OF_WT40];
        shop.run(shop.order(due, numbers[job + JOBS_OF_WT40]), numbers[job]);
      }
      instances.add(new Instance("wt40-" + (i + 1), shop.problem(), optima[i], false));
    }
    return instances;
  }

  /** A job shop, makespan. A job is a lot whose prints come in listed order. */
  Instance jobShop(String name, long best) {
    int[] numbers = numbers(read("jsp/" + name).replaceAll("(?m)^(?![ \\t0-9]*$).*$", ""));
    int jobs = numbers[0];
    int steps = numbers[1];
    BareShop shop = BareShop.presses(steps).finishCosts();
    for (int job = 0; job < jobs; job++) {
      int order = shop.order(100_000, 1);
      for (int step = 0; step < steps; step++) {
        int at = 2 + 2 * (job * steps + step);
        shop.run(order, numbers[at + 1]).lot(job).stage(step).on(numbers[at]);
      }
    }
    return new Instance(name, shop.problem(), best, true);
  }

  /** Weighted tardiness with set-ups by sequence: V. A. Cicirello 2003. */
  Instance setUps(int number, long best) {
    String text = read("wtsds/wt_sds_%d.instance".formatted(number));
    int[] minutes = section(text, "Process Times:", "Weights:");
    int[] weights = section(text, "Weights:", "Duedates:");
    int[] due = section(text, "Duedates:", "Setup Times:");
    int[] arcs = section(text, "Setup Times:", "End Problem Specification");
    int[][] setUpS = new int[minutes.length + 1][minutes.length];
    for (int i = 0; i < arcs.length; i += 3) {
      setUpS[arcs[i] + 1][arcs[i + 1]] = arcs[i + 2] * MINUTE;
    }
    BareShop shop = BareShop.presses(1);
    for (int job = 0; job < minutes.length; job++) {
      shop.run(shop.order(due[job], weights[job]), minutes[job]);
    }
    return new Instance("wtsds-" + number, shop.problem(setUpS), best, false);
  }

  private static int[] section(String text, String from, String to) {
    int begin = text.indexOf(from) + from.length();
    return numbers(text.substring(begin, text.indexOf(to, begin)));
  }

  /** All whole numbers of a text; a minus sign belongs to its number. */
  private static int[] numbers(String text) {
    return Arrays.stream(text.split("[^0-9-]+"))
        .filter(word -> !word.isEmpty())
        .mapToInt(Integer::parseInt)
        .toArray();
  }

  private String read(String name) {
    try {
      return Files.readString(folder.resolve(name));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + folder.resolve(name), e);
    }
  }
}
