package org.potlife.outside;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.potlife.simulation.Problem;

/** A job of the textbook on one machine: an order with one run. */
record Job(int minutes, int weight, int due) {

  static Arbitrary<List<Job>> lists(int most) {
    return Combinators.combine(
            Arbitraries.integers().between(1, 40),
            Arbitraries.integers().between(1, 9),
            Arbitraries.integers().between(0, 120))
        .as(Job::new)
        .list()
        .ofMinSize(2)
        .ofMaxSize(most);
  }

  /** One press, one order for each job. */
  static Problem onOnePress(List<Job> jobs) {
    BareShop shop = BareShop.presses(1);
    jobs.forEach(job -> shop.run(shop.order(job.due(), job.weight()), job.minutes()));
    return shop.problem();
  }

  /** Numbers of the jobs in an order. */
  static int[] sorted(List<Job> jobs, Comparator<Job> order) {
    return IntStream.range(0, jobs.size())
        .boxed()
        .sorted(Comparator.comparing(jobs::get, order))
        .mapToInt(Integer::intValue)
        .toArray();
  }
}
