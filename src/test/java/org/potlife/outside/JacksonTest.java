package org.potlife.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.potlife.planning.BareSearch;
import org.potlife.simulation.Problem;

/**
 * J. R. Jackson, Scheduling a production line to minimize maximum tardiness, Management Science
 * Research Project report 43, University of California, Los Angeles, 1955 (from memory): by rising
 * due date the greatest lateness is least.
 */
class JacksonTest {

  @Provide
  Arbitrary<List<Job>> jobs() {
    return Job.lists(6);
  }

  @Property(tries = 60)
  void noSequenceHasASmallerGreatestLatenessThanTheOneByDueDate(@ForAll("jobs") List<Job> jobs) {
    Plans plans = new Plans(Job.onOnePress(jobs));
    int least = greatestLateness(plans, Job.sorted(jobs, Comparator.comparing(Job::due)));
    assertThat(least).isEqualTo(byFormula(jobs));
    for (int[] sequence : Plans.permutations(jobs.size())) {
      assertThat(greatestLateness(plans, sequence)).isGreaterThanOrEqualTo(least);
    }
  }

  @Property(tries = 60)
  void dispatchByDueDateIsThatSequence(@ForAll("jobs") List<Job> jobs) {
    Problem problem = Job.onOnePress(jobs);
    int[] dispatched = BareSearch.earliestDueDate(problem).sequences()[0];
    assertThat(greatestLateness(new Plans(problem), dispatched)).isEqualTo(byFormula(jobs));
  }

  private static int greatestLateness(Plans plans, int[] sequence) {
    return Arrays.stream(plans.latenessMinutes(sequence)).max().orElseThrow();
  }

  private static int byFormula(List<Job> jobs) {
    int now = 0;
    int greatest = Integer.MIN_VALUE;
    for (Job job : jobs.stream().sorted(Comparator.comparing(Job::due)).toList()) {
      now += job.minutes();
      greatest = Math.max(greatest, now - job.due());
    }
    return greatest;
  }
}
