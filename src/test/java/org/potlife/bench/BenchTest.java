package org.potlife.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.potlife.outside.CompleteCase;
import org.potlife.planning.BareSearch;
import org.potlife.planning.BareSearch.Allowed;
import org.potlife.simulation.Problem;
import org.potlife.simulation.Simulation;

/** The benchmark measures what it says: no time is looked at here. */
class BenchTest {

  @TempDir private Path folder;

  private Settings settings(String words) {
    return Settings.of((words + " out=" + folder).split(" "));
  }

  @Test
  void aSmallCaseIsSearchedAndProven() throws IOException {
    AgainstProof.small(
        settings("sizes=6 seconds=0.1 instances=1 seeds=1 reference=60"), new Report(folder));
    assertThat(Files.readString(folder.resolve("small.csv"))).contains("\"6\",\"1\",\"1\"");
  }

  @Test
  void theReducedTableSaysBothSidesAndDrawsTheCurve() throws IOException {
    AgainstProof.reduced(
        settings("sizes=6 seconds=0.1 instances=1 seeds=1 reference=5"), new Report(folder));
    assertThat(Files.readString(folder.resolve("reduced.md"))).contains("geometric mean");
    assertThat(Files.readString(folder.resolve("reduced-6.svg"))).startsWith("<svg");
  }

  @Test
  void aSearchIsNotWorseThanTheDispatchRuleThatItBeginsWith() {
    Problem problem = BareSearch.problem(BenchPlant.request(40, 1, 0));
    BareSearch.Found start = BareSearch.dispatched(problem);
    BareSearch.Found found =
        BareSearch.timed(problem, start, 1, new Allowed(0.1, false, 2)).found();
    assertThat(found.outcome()).isLessThanOrEqualTo(start.outcome());
    assertThat(new Simulation(problem).run(found.sequences(), found.lengths(), null))
        .isEqualTo(found.outcome());
  }

  @Test
  void thePlantIsUnderPressure() {
    Problem problem = BareSearch.problem(BenchPlant.request(150, 1, 0));
    assertThat(BareSearch.dispatched(problem).outcome().unplaced()).isZero();
    assertThat(BareSearch.dispatched(problem).outcome().weightedLateMinutes()).isPositive();
  }

  @Test
  void ourDispatchRulesComeToLessThanThePublishedOnes() {
    for (int instance = 1; instance <= 3; instance++) {
      Problem problem = BareSearch.problem(BenchPlant.request(150, instance, 0));
      assertThat(BareSearch.dispatched(problem).outcome())
          .isLessThan(BareSearch.byAtcs(problem).outcome());
    }
  }

  @Test
  void theSameSeedMakesTheSameCase() {
    assertThat(CompleteCase.ofSize(20, 3, true, 4).orders())
        .isEqualTo(CompleteCase.ofSize(20, 3, true, 4).orders());
    assertThat(CompleteCase.ofSize(20, 3, true, 4).runs()).hasSize(20);
  }

  @Test
  void measuredSetUpsCountBetweenRuns() throws IOException {
    Files.createDirectories(folder.resolve("wtsds"));
    Files.writeString(
        folder.resolve("wtsds/wt_sds_1.instance"),
        """
        Process Times:
        10
        20
        Weights:
        1
        1
        Duedates:
        0
        0
        Setup Times:
        -1	0	5
        -1	1	1
        0	1	7
        1	0	2
        End Problem Specification
        """);
    Problem problem = new Published(folder).setUps(1, 0).problem();
    assertThat(late(problem, 0, 1)).isEqualTo(5 + 10 + 5 + 10 + 7 + 20);
    assertThat(late(problem, 1, 0)).isEqualTo(1 + 20 + 1 + 20 + 2 + 10);
  }

  private static long late(Problem problem, int... sequence) {
    return new Simulation(problem)
        .run(new int[][] {sequence}, new int[] {2}, null)
        .weightedLateMinutes();
  }

  @Test
  void aJobShopIsReadWithItsHead() throws IOException {
    Files.createDirectories(folder.resolve("jsp"));
    Files.writeString(
        folder.resolve("jsp/two"),
        """
        #++++
        # instance two, 2x2, made up
        2 2
        0 3 1 4
        1 2 0 5
        """);
    Problem problem = new Published(folder).jobShop("two", 8).problem();
    assertThat(problem.movable()).isEqualTo(4);
    assertThat(BareSearch.dispatched(problem).outcome().costMilli()).isBetween(8L, 14L);
  }

  @Test
  void figuresAreAsInTheTextbook() {
    assertThat(Figures.median(List.of(3.0, 1.0, 2.0))).isEqualTo(2);
    assertThat(Figures.geometricMean(List.of(1.0, 4.0))).isEqualTo(2, within(1e-9));
    assertThat(Figures.spread(List.of(1.0, 3.0))).isEqualTo(Math.sqrt(2) / 2, within(1e-9));
    assertThat(Figures.power(List.of(1.0, 10.0), List.of(2.0, 200.0))).isEqualTo(2, within(1e-9));
  }
}
