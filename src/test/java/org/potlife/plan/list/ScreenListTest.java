package org.potlife.plan.list;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.at;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.potlife.ink.InkReport;
import org.potlife.plan.PlanFixture;
import org.potlife.plan.list.ScreenList.Competitor;
import org.potlife.plan.list.ScreenList.DryingCourse;
import org.potlife.plan.list.ScreenList.Fetch;
import org.potlife.plan.list.ScreenList.Job;
import org.potlife.plan.list.ScreenList.Load;
import org.potlife.plan.list.ScreenList.MeshUse;
import org.potlife.plan.list.ScreenList.Stage;
import org.potlife.plan.list.ScreenList.Stop;
import org.potlife.platform.json.JsonSettings;
import org.potlife.room.ClimateReading;
import org.potlife.screen.FrameStock;
import org.potlife.screen.ScreenRoom;
import org.potlife.screen.VapourPressure;
import org.potlife.sheet.PlanSheet;

class ScreenListTest {

  private static final LocalDate EVE = DAY.minusDays(1);

  private final ScreenList list = ScreenList.of(PlanFixture.index(), DAY);
  private final ScreenList evening = ScreenList.of(PlanFixture.index(), DAY.minusDays(1));

  @Test
  void stagesStandInTheOrderOfTheWork() {
    assertThat(list.stages())
        .extracting(Stage::step)
        .containsExactly(
            "degrease",
            "dry-degreased",
            "coat",
            "dry-coated",
            "expose",
            "wash-out",
            "dry-washed",
            "post-expose",
            "tape");
  }

  @Test
  void stagesWithoutAJobAreLeftOut() {
    assertThat(evening.stages())
        .extracting(Stage::step)
        .containsExactly("degrease", "dry-degreased", "coat", "dry-coated");
  }

  @Test
  void screensOfOneSetAreOneJob() {
    Job crest = evening.stages().get(0).jobs().get(0);

    assertThat(crest.frames()).hasSize(8);
    assertThat(crest.where()).containsExactly("sink-1", "sink-2");
    assertThat(crest.from()).isEqualTo(at(DAY.minusDays(1), "17:00"));
    assertThat(crest.latestFrom()).isEqualTo(at(DAY.minusDays(1), "18:00"));
    assertThat(crest.press()).isEqualTo("P1");
    assertThat(crest.setUpStart()).isEqualTo(at("06:10"));
  }

  @Test
  void aLoadHoldsWhatComesOutOfACabinetTogether() {
    Load coated =
        evening.loads().stream()
            .filter(l -> l.cabinet().equals("C2") && l.step().equals("dry-coated"))
            .findFirst()
            .orElseThrow();

    assertThat(coated.frames()).hasSize(6);
    assertThat(coated.capacity()).isEqualTo(6);
    assertThat(coated.dryAt()).isEqualTo(at(DAY.minusDays(1), "18:33"));
  }

  @Test
  void aFullLoadShutsWhenTheLastScreenIsInAndOthersAfterTheGathering() {
    Load full =
        evening.loads().stream().filter(l -> l.capacity() == l.frames().size()).findFirst().get();
    Load loose =
        evening.loads().stream().filter(l -> l.capacity() > l.frames().size()).findFirst().get();

    assertThat(full.shutBy()).isEqualTo(full.lastIn());
    assertThat(loose.shutBy()).isEqualTo(loose.firstIn().plusMinutes(20));
  }

  @Test
  void keptStencilsAreFetchedByTheSetUpOfTheirFirstRun() {
    assertThat(list.fetches())
        .extracting(f -> f.frame().screen())
        .containsExactly("K-loaf-chalk", "K-loaf-soot");
    assertThat(list.fetches()).extracting(Fetch::neededBy).containsOnly(at("06:30"));
    assertThat(evening.fetches()).isEmpty();
  }

  @Test
  void aDayWithoutScreensIsEmpty() {
    assertThat(ScreenList.of(PlanFixture.index(), DAY.plusDays(4)).empty()).isTrue();
  }

  @Test
  void theSlackOfAJobIsWhatIsLeftUntilItsLatestStart() {
    Job crest = evening.stages().get(0).jobs().get(0);

    assertThat(crest.slackMinutes()).isEqualTo(60);
  }

  private static Load coatedInC2(ClimateReading... readings) {
    PlanIndex plan = PlanFixture.index();
    PlanIndex read =
        new PlanIndex(
            plan.shop(), PlanFixture.orders(), plan.sheet(), InkReport.NOTHING, List.of(readings));
    return ScreenList.of(read, EVE).loads().stream()
        .filter(l -> l.cabinet().equals("C2") && l.step().equals("dry-coated"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aLoadSaysWhatItNeedsAndWhatItGets() {
    DryingCourse course = coatedInC2().drying();

    // an hour at 28 degrees and 35 %: 2457.8 Pa, twice that with the cabinet's airflow
    assertThat(course.requiredPaH()).isEqualTo(1250 * 1.2);
    assertThat(course.reachedPaH()).isEqualTo(2 * VapourPressure.deficitPa(28, 35), within(1e-6));
    assertThat(course.stops()).isEmpty();
  }

  @Test
  void aLoadInAirAboveTheLimitSaysSinceWhenItDoesNotDryAndWhatHelps() {
    Load load =
        coatedInC2(
            new ClimateReading("C2", at(EVE, "17:40"), 22, 75),
            new ClimateReading("C2", at(EVE, "18:20"), 23, 50));

    Stop stop = load.drying().stops().get(0);
    assertThat(load.drying().stops()).hasSize(1);
    assertThat(stop.since()).isEqualTo(at(EVE, "17:40"));
    assertThat(stop.until()).isEqualTo(at(EVE, "18:20"));
    assertThat(stop.read()).isTrue();
    assertThat(stop.driesFromC()).isEqualTo(25.71, within(0.005));
    assertThat(stop.dryCabinets()).containsExactly("C1");
  }

  @Test
  void airThatIsTooHumidFromTheStartStopsTheLoadSinceItIsIn() {
    Load load =
        coatedInC2(
            new ClimateReading("C2", at(EVE, "12:00"), 22, 75),
            new ClimateReading("C1", at(EVE, "12:00"), 22, 75));

    Stop stop = load.drying().stops().get(0);
    assertThat(stop.since()).isEqualTo(load.lastIn());
    assertThat(stop.until()).isEqualTo(load.dryAt());
    assertThat(stop.dryCabinets()).isEmpty();
    assertThat(load.drying().reachedPaH()).isZero();
  }

  @Test
  void framesThatAreEnoughHaveNoCompetitors() {
    MeshUse mesh = list.meshes().get(0);

    // eight of the crest, one of the roster, two of the lamp, two kept
    assertThat(mesh.mostInUse()).isEqualTo(13);
    assertThat(mesh.mostFrom()).isEqualTo(at("06:10"));
    assertThat(mesh.kept()).isEqualTo(2);
    assertThat(mesh.allInUse()).isFalse();
    assertThat(mesh.competitors()).isEmpty();
  }

  @Test
  void runsThatNeedTheSameScarceMeshCompete() {
    PlanIndex plan = PlanFixture.index();
    PlanIndex scarce =
        new PlanIndex(
            plan.shop().withScreenRoom(withFrames(plan.shop().screenRoom(), 10)),
            PlanFixture.orders(),
            rosterWaits(plan.sheet()));

    MeshUse mesh = ScreenList.of(scarce, EVE).meshes().get(0);

    assertThat(mesh.allInUse()).isTrue();
    assertThat(mesh.mostFrom()).isEqualTo(at(EVE, "17:00"));
    assertThat(mesh.holders()).containsExactly("HC-2041 crest, front");
    assertThat(mesh.competitors())
        .containsExactly(new Competitor("HC-2041 roster, back", "P1", 45, at("06:00")));
  }

  private static ScreenRoom withFrames(ScreenRoom r, int count) {
    return new ScreenRoom(
        r.degreasingSinks(),
        r.coatingBenches(),
        r.exposureUnits(),
        r.washOutBooths(),
        r.tapingTables(),
        r.storeHumidityPercent(),
        r.emulsion(),
        r.stages(),
        r.cabinets(),
        List.of(new FrameStock(43.0, 80.0, count)),
        r.kept(),
        r.shifts(),
        r.closures());
  }

  private static PlanSheet rosterWaits(PlanSheet sheet) {
    ObjectMapper mapper = JsonSettings.newMapper();
    JsonNode tree = mapper.valueToTree(sheet);
    for (JsonNode run : tree.get("runs")) {
      if (run.get("id").textValue().contains("roster")) {
        ArrayNode waits = ((ObjectNode) run).putArray("waits");
        waits.addObject().put("cause", "screens").put("minutes", 45);
      }
    }
    return mapper.convertValue(tree, PlanSheet.class);
  }
}
