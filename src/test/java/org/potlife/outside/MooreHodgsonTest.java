package org.potlife.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * J. M. Moore, An n job, one machine sequencing algorithm for minimizing the number of late jobs,
 * Management Science 15, 1968, with T. J. Hodgson's form of the algorithm (from memory): go by due
 * date, and whenever a job would be late put the longest one so far to the end.
 */
class MooreHodgsonTest {

  @Provide
  Arbitrary<List<Job>> jobs() {
    return Job.lists(6);
  }

  @Property(tries = 60)
  void noSequenceHasFewerLateOrders(@ForAll("jobs") List<Job> jobs) {
    Plans plans = new Plans(Job.onOnePress(jobs));
    List<Integer> late = new ArrayList<>();
    int[] sequence = sequence(jobs, late);
    assertThat(lateOrders(plans, sequence)).isEqualTo(late.size());
    int fewest =
        Plans.permutations(jobs.size()).stream()
            .mapToInt(permutation -> lateOrders(plans, permutation))
            .min()
            .orElseThrow();
    assertThat(fewest).isEqualTo(late.size());
  }

  private static long lateCount(int[] lateness) {
    return Arrays.stream(lateness).filter(minutes -> minutes > 0).count();
  }

  private static int lateOrders(Plans plans, int[] sequence) {
    return (int) lateCount(plans.latenessMinutes(sequence));
  }

  /** The sequence, those that are late at its end. */
  private static int[] sequence(List<Job> jobs, List<Integer> late) {
    PriorityQueue<Integer> kept =
        new PriorityQueue<>(
            Comparator.comparingInt((Integer number) -> jobs.get(number).minutes()).reversed());
    int now = 0;
    List<Integer> byDueDate = new ArrayList<>();
    for (int number : Job.sorted(jobs, Comparator.comparing(Job::due))) {
      byDueDate.add(number);
      kept.add(number);
      now += jobs.get(number).minutes();
      if (now > jobs.get(number).due()) {
        int longest = kept.remove();
        now -= jobs.get(longest).minutes();
        late.add(longest);
      }
    }
    byDueDate.removeAll(late);
    byDueDate.addAll(late);
    return byDueDate.stream().mapToInt(Integer::intValue).toArray();
  }
}
