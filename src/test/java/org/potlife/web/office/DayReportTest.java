package org.potlife.web.office;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.at;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.potlife.closeout.CloseOut;
import org.potlife.closeout.CloseOut.CarriedOver;
import org.potlife.closeout.CloseOut.InkLoss;
import org.potlife.closeout.CloseOut.Promises;
import org.potlife.closeout.CloseOut.RunResult;
import org.potlife.closeout.PressFigures;
import org.potlife.plan.PlanFixture;

/** What of a very long day is shown at first. */
class DayReportTest {

  private static final InkLoss LOSS =
      new InkLoss(
          900,
          11.4,
          "EUR",
          List.of(
              new InkLoss.OfInk("bone", 300, 0, 300, 7.2),
              new InkLoss.OfInk("brick", 0, 0, 0, 0),
              new InkLoss.OfInk("teal", 0, 300, 0, 8.4)));

  private static RunResult run(String press, String order) {
    return new RunResult(
        order + ":logo:front:1",
        order,
        "logo",
        "front",
        1,
        press,
        "not-told",
        at("06:00"),
        at("08:00"),
        100,
        200,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null);
  }

  private static DayReport report(int presses, boolean whole) {
    List<RunResult> runs =
        IntStream.range(0, presses)
            .boxed()
            .flatMap(i -> List.of(run("X" + i, "A-" + i), run("X" + i, "B-" + i)).stream())
            .toList();
    List<CarriedOver> over =
        runs.stream()
            .map(run -> new CarriedOver(run.run(), run.order(), run.design(), run.position(), 10))
            .toList();
    PressFigures none = new PressFigures("all", 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
    CloseOut day =
        new CloseOut(
            "p",
            DAY,
            at("20:00"),
            runs,
            List.of(),
            none,
            new Promises(0, 0, null, List.of()),
            LOSS,
            over);
    return new DayReport(day, DayReport.Stage.of(DAY, DAY), PlanFixture.shop(), Map.of(), whole);
  }

  @Test
  void ofVeryManyPressesTheFirstAreShownWithAllTheirRuns() {
    DayReport report = report(40, false);

    assertThat(report.isCut()).isTrue();
    assertThat(report.drawn()).hasSize(12);
    assertThat(report.busy()).isEqualTo(40);
    assertThat(report.runs()).hasSize(24);
    assertThat(report.carried()).hasSize(25);
    assertThat(report.carriedPieces()).as("all of them count").isEqualTo(800);
  }

  @Test
  void allAreShownToWhomAsksForAll() {
    DayReport report = report(40, true);

    assertThat(report.isCut()).isFalse();
    assertThat(report.runs()).hasSize(80);
    assertThat(report.carried()).hasSize(80);
  }

  @Test
  void aDayOfUsualSizeIsNotCut() {
    assertThat(report(12, false).isCut()).isFalse();
  }

  @Test
  void lostInkIsPricedByCauseAndTheDearestStandsFirst() {
    List<DayLoss> losses = report(1, false).losses();

    assertThat(losses).extracting(loss -> loss.ink().ink()).containsExactly("teal", "bone");
    assertThat(losses.get(1).discarded().cost()).isEqualTo(3.6, within(1e-9));
    DayLoss all = report(1, false).loss();
    assertThat(all.together().g()).isEqualTo(900);
    assertThat(all.together().cost()).isEqualTo(15.6, within(1e-9));
    assertThat(all.unaccounted().cost()).isEqualTo(8.4, within(1e-9));
  }

  @Test
  void aFigureOverNothingIsADash() {
    PressFigures none = new PressFigures("P1", 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
    PressFigures some = new PressFigures("P1", 420, 420, 270, 150, 0, 420, 150, 1000, 1000, 0);

    assertThat(IsoFigure.AVAILABILITY.shown(none)).isEqualTo("\u2013");
    assertThat(IsoFigure.AVAILABILITY.shown(some)).isEqualTo("35.7 %");
    assertThat(IsoFigure.THROUGHPUT.shown(some)).isEqualTo("142.9 /h");
  }
}
