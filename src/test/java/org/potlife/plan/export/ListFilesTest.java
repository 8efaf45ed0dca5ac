package org.potlife.plan.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.potlife.plan.PlanFixture.DAY;

import java.io.IOException;
import java.io.StringReader;
import java.time.OffsetDateTime;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.potlife.plan.PlanFixture;
import org.potlife.plan.Stability;
import org.potlife.plan.list.ActivationList;
import org.potlife.plan.list.BeltList;
import org.potlife.plan.list.ChangeList;
import org.potlife.plan.list.LateList;
import org.potlife.plan.list.PlanIndex;
import org.potlife.plan.list.PlanOverview;
import org.potlife.plan.list.PressList;
import org.potlife.plan.list.PromiseChange;
import org.potlife.plan.list.ScreenList;

class ListFilesTest {

  private final PlanIndex plan = PlanFixture.index();

  @Test
  void theMassesOfABatchAddUpToWhatIsInTheBucket() {
    List<CSVRecord> rows = read(ActivationCsv.of(ActivationList.of(plan, DAY)));
    List<CSVRecord> brick = rows.stream().filter(r -> r.get("batch").equals("brick-1")).toList();

    assertThat(brick).extracting(r -> r.get("role")).endsWith("retarder", "agent");
    assertThat(brick.stream().mapToInt(r -> Integer.parseInt(r.get("massG"))).sum())
        .isEqualTo(Integer.parseInt(brick.get(3).get("scaleG")));
    assertThat(brick.get(0).get("activateFrom")).isEqualTo("2026-12-01T06:32:00+01:00");
    assertThat(brick.get(0).get("runs")).isEqualTo("HC-2041-crest-front-1; HC-2041-roster-back-1");
  }

  @Test
  void inkWithoutAgentHasNoAgentRowAndNoClock() {
    List<CSVRecord> chalk =
        read(ActivationCsv.of(ActivationList.of(plan, DAY))).stream()
            .filter(r -> r.get("batch").equals("chalk-1"))
            .toList();

    assertThat(chalk).extracting(r -> r.get("role")).containsExactly("base", "pigment");
    assertThat(chalk.get(0).get("useBy")).isEmpty();
  }

  @Test
  void whatChangesIsToldApartByItsFirstColumn() {
    OffsetDateTime before = PlanFixture.at("08:00");
    ChangeList changes =
        new ChangeList(
            "yard-1",
            new Stability(1, 1, 100, 1, 0, 4.2),
            List.of(
                new ChangeList.Move(
                    "A-1",
                    "A-1 crest, front",
                    "P1",
                    before,
                    "P2",
                    before.plusMinutes(30),
                    30,
                    List.of("P1 is down", "by choice"),
                    "it moves")),
            List.of("B-1"),
            List.of("C-1"),
            List.of(
                new PromiseChange(
                    "A-1", "Yard", before, before.plusMinutes(30), 0, 30, true, "it is late")),
            null,
            List.of());

    List<CSVRecord> rows = read(ChangeCsv.of(changes));

    assertThat(rows)
        .extracting(r -> r.get("change"))
        .containsExactly("moved", "added", "gone", "promise");
    assertThat(rows.get(0).get("to")).isEqualTo("2026-12-01T08:30:00+01:00");
    assertThat(rows.get(0).get("text")).isEqualTo("it moves");
    assertThat(rows.get(1).get("run")).isEqualTo("B-1");
    assertThat(rows.get(3).get("lateMinutes")).isEqualTo("30");
  }

  @Test
  void textThatWouldBeAFormulaIsNeutralised() {
    List<CSVRecord> rows = read(PressCsv.of(PressList.of(plan, DAY)));

    assertThat(rows)
        .extracting(r -> r.get("customer"))
        .contains("'=Meadow & <b>Bakery</b>", "Harbour Choir");
  }

  @Test
  void everyStartOfAFormulaIsNeutralisedAndNumbersAreNot() {
    CsvTable csv = new CsvTable("text", "number");
    List.of("=1", "+1", "-1", "@a", "\ta", "\ra", "  =1", "\uFF1D1")
        .forEach(text -> csv.row(text, -1));

    assertThat(read(csv.text())).allSatisfy(r -> assertThat(r.get("text")).startsWith("'"));
    assertThat(read(csv.text())).allSatisfy(r -> assertThat(r.get("number")).isEqualTo("-1"));
  }

  @Test
  void quotesCommasAndLineEndsSurvive() {
    CsvTable csv = new CsvTable("text", "other");
    csv.row("say \"hi\", then\r\ngo", null);

    assertThat(csv.text()).isEqualTo("text,other\r\n\"say \"\"hi\"\", then\r\ngo\",\r\n");
  }

  @Test
  void aRowMustFitItsHeader() {
    CsvTable csv = new CsvTable("one", "two");

    assertThatThrownBy(() -> csv.row("only one")).hasMessage("1 cells under 2 columns");
  }

  @Test
  void screensHaveOneRowPerStageAndKeptStencilsAreFetched() {
    List<CSVRecord> rows = read(ScreenCsv.of(ScreenList.of(plan, DAY)));

    assertThat(rows.stream().filter(r -> r.get("step").equals("fetch"))).hasSize(2);
    assertThat(rows.stream().filter(r -> r.get("screen").equals("roster/brick"))).hasSize(9);
  }

  @Test
  void lateAndUnplacedStandInOneFile() {
    List<CSVRecord> rows = read(LateCsv.of(LateList.of(plan)));

    assertThat(rows).extracting(r -> r.get("state")).containsExactly("late", "unplaced");
    assertThat(rows.get(1).get("rule")).isEqualTo("R19");
  }

  @Test
  void beltsAndPromisesHaveTheirRows() {
    assertThat(read(BeltCsv.of(BeltList.of(plan, DAY)))).hasSize(5);
    assertThat(read(PromiseCsv.of(PlanOverview.of(plan)))).hasSize(3);
  }

  private static List<CSVRecord> read(String csv) {
    try {
      return CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(new StringReader(csv))
          .getRecords();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
