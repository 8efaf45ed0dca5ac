package org.potlife.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.potlife.planning.BareSearch;
import org.potlife.planning.BareSearch.Found;
import org.potlife.simulation.Problem;

/**
 * W. E. Smith, Various optimizers for single-stage production, Naval Research Logistics Quarterly
 * 3, 1956 (from memory): by falling weight per minute of work the weighted sum of the completion
 * times is least. With everything due at once that sum is the weighted lateness.
 */
class SmithTest {

  @Provide
  Arbitrary<List<Job>> jobs() {
    return Job.lists(6)
        .map(jobs -> jobs.stream().map(job -> new Job(job.minutes(), job.weight(), 0)).toList());
  }

  @Property(tries = 60)
  void noSequenceIsLessLateThanTheOneByWeightPerMinute(@ForAll("jobs") List<Job> jobs) {
    Plans plans = new Plans(Job.onOnePress(jobs));
    long least = leastByFormula(jobs);
    assertThat(plans.of(byWeightPerMinute(jobs)).outcome().weightedLateMinutes()).isEqualTo(least);
    for (int[] sequence : Plans.permutations(jobs.size())) {
      assertThat(plans.of(sequence).outcome().weightedLateMinutes()).isGreaterThanOrEqualTo(least);
    }
  }

  @Property(tries = 20)
  void theSearchFindsItFromTheWorstStart(@ForAll("jobs") List<Job> jobs) {
    Problem problem = Job.onOnePress(jobs);
    int[] worst = Job.sorted(jobs, weightPerMinute());
    Found found = BareSearch.improved(problem, new Plans(problem).of(worst), 1, 10_000);
    assertThat(found.outcome().weightedLateMinutes()).isEqualTo(leastByFormula(jobs));
  }

  private static long leastByFormula(List<Job> jobs) {
    long now = 0;
    long sum = 0;
    for (int number : byWeightPerMinute(jobs)) {
      now += jobs.get(number).minutes();
      sum += now * jobs.get(number).weight();
    }
    return sum;
  }

  private static int[] byWeightPerMinute(List<Job> jobs) {
    return Job.sorted(jobs, weightPerMinute().reversed());
  }

  private static Comparator<Job> weightPerMinute() {
    return (a, b) -> Integer.compare(a.weight() * b.minutes(), b.weight() * a.minutes());
  }
}
