package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.potlife.demo.DemoPlant;
import org.potlife.simulation.DispatchTimes;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;
import org.potlife.simulation.Simulation;

/** Changes of the demo plant's lines are rehearsed; now and then the whole shop is simulated. */
class RehearsalTest {

  private static final LocalDate DAY = LocalDate.of(2026, 12, 1);

  private Problem problem;
  private Lines lines;
  private Rehearsal rehearsal;
  private Temperatures temperatures;
  private Settling settling;
  private LineMoves moves;

  @BeforeEach
  void dispatchedPlan() {
    problem =
        BareSearch.problem(
            new PlanRequest(
                DemoPlant.shop(),
                DemoPlant.orders(DAY),
                DAY,
                Instant.parse("2026-11-30T13:00:00Z"),
                Optional.empty(),
                1,
                1));
    BareSearch.Found found = BareSearch.dispatched(problem);
    lines = new Lines(problem.presses().length, problem.movable());
    lines.set(found.sequences(), found.lengths());
    rehearsal =
        new Rehearsal(
            problem, lines, new ShadowPrices(problem, lines, new DispatchTimes(problem)), true);
    temperatures = new Temperatures();
    settling = new Settling(lines, rehearsal, temperatures);
    DispatchTimes times = new DispatchTimes(problem);
    moves =
        new LineMoves(
            problem, lines, run -> rehearsal.base().endOf(run), times, new SplittableRandom(3));
  }

  @Test
  void withRoomsAsTheyWereThePlanItselfComesToTheSame() {
    rehearsal.withInk(true);
    settling.begin();
    assertThat(settling.outcome()).isEqualTo(simulated());
    assertThat(settling.rehearsed()).isEqualTo(settling.outcome());
  }

  @Test
  void whoNeverWaitsForInkIsNotLater() {
    rehearsal.withInk(false);
    settling.begin();
    assertThat(settling.outcome()).isEqualTo(simulated());
    assertThat(settling.rehearsed().weightedLateMinutes())
        .isPositive()
        .isLessThanOrEqualTo(settling.outcome().weightedLateMinutes());
  }

  @Test
  void whatWasRehearsedStaysIfTheWholeShopComesToAboutTheSame() {
    rehearsal.withInk(true);
    settling.begin();
    Outcome current = improveByRehearsal();
    settling.settle(current, () -> 0);
    assertThat(settling.isSettled()).isTrue();
    assertThat(settling.outcome()).isEqualTo(simulated());
    assertThat(settling.outcome().weightedLateMinutes()).isEqualTo(current.weightedLateMinutes());
  }

  @Test
  void whatTheWholeShopShowsToBeFarWorseIsTakenBack() {
    temperatures.set(1, 1);
    rehearsal.withInk(true);
    settling.begin();
    Outcome before = settling.outcome();
    String linesBefore = text();
    boolean worse = false;
    while (!worse) {
      worse = moves.change() && simulated().compareTo(before) > 0;
      if (!worse && !text().equals(linesBefore)) {
        lines.undo();
      }
    }
    settling.changed();
    settling.settle(settling.rehearsed(), () -> 0);
    assertThat(settling.outcome()).isEqualTo(before);
    assertThat(text()).isEqualTo(linesBefore);
  }

  private Outcome improveByRehearsal() {
    Outcome current = settling.rehearsed();
    int better = 0;
    while (better < 5) {
      if (moves.change()) {
        Outcome outcome = rehearsal.rehearse();
        if (outcome.compareTo(current) < 0) {
          current = rehearsal.rehearseAsBase();
          settling.changed();
          better++;
        } else {
          lines.undo();
        }
      }
    }
    return current;
  }

  private Outcome simulated() {
    return new Simulation(problem).run(lines.runs(), lines.lengths(), null);
  }

  private String text() {
    StringBuilder text = new StringBuilder();
    for (int press = 0; press < lines.lengths().length; press++) {
      for (int place = 0; place < lines.length(press); place++) {
        text.append(lines.run(press, place)).append(' ');
      }
      text.append('/');
    }
    return text.toString();
  }
}
