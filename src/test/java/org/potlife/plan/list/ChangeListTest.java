package org.potlife.plan.list;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.potlife.plan.PlanFixture;
import org.potlife.plan.Stability;
import org.potlife.platform.json.JsonSettings;
import org.potlife.sheet.PlanSheet;

/** What a planner reads before a draft takes the place of the plan in force. */
class ChangeListTest {

  private static final ObjectMapper MAPPER = JsonSettings.newMapper();

  private final PlanIndex plan = PlanFixture.index();

  private PlanSheet before(Consumer<ObjectNode> otherwise) throws JsonProcessingException {
    ObjectNode sheet = MAPPER.valueToTree(plan.sheet());
    otherwise.accept(sheet);
    return MAPPER.treeToValue(sheet, PlanSheet.class);
  }

  private static ObjectNode run(ObjectNode sheet, int at) {
    return (ObjectNode) sheet.get("runs").get(at);
  }

  private static void shift(ObjectNode run, String field, long minutes) {
    OffsetDateTime time = OffsetDateTime.parse(run.get(field).asText());
    run.put(field, time.plusMinutes(minutes).toString());
  }

  @Test
  void theSamePlanChangesNothing() {
    ChangeList changes = ChangeList.of(plan, "demo-1", Optional.of(plan.sheet()));

    assertThat(changes.stability().runs()).isEqualTo(plan.sheet().runs().size());
    assertThat(changes.moved()).isEmpty();
    assertThat(changes.stability().movedPercent()).isZero();
    assertThat(changes.promises()).isEmpty();
  }

  @Test
  void aRunThatStartsLaterOnAnotherPressIsTold() throws JsonProcessingException {
    PlanSheet before =
        before(
            sheet -> {
              shift(run(sheet, 0), "setUpStart", -30);
              run(sheet, 0).put("press", "P3");
            });

    ChangeList changes = ChangeList.of(plan, "demo-1", Optional.of(before));

    ChangeList.Move move = changes.moved().get(0);
    assertThat(move.run()).isEqualTo(plan.sheet().runs().get(0).id());
    assertThat(move.fromPress()).isEqualTo("P3");
    assertThat(move.shiftMinutes()).isEqualTo(30);
    assertThat(changes.stability().pressChanges()).isEqualTo(1);
    assertThat(changes.stability().movedPercent()).isEqualTo(20.0);
    // 30 min over the root of 1 + hours until the old start, over all five runs; by hand
    double hours =
        (before.runs().get(0).setUpStart().toEpochSecond()
                - plan.sheet().plannedAt().toEpochSecond())
            / 3600.0;
    assertThat(changes.stability().meanWeightedShiftMinutes())
        .isEqualTo(Math.round(10 * 30 / Math.sqrt(1 + hours) / 5) / 10.0);
  }

  @Test
  void aPromiseThatGetsWorseIsTold() throws JsonProcessingException {
    PlanSheet before =
        before(
            sheet -> {
              ArrayNode late = (ArrayNode) sheet.get("late");
              late.removeAll();
              for (JsonNode run : sheet.get("runs")) {
                if (run.get("order").asText().equals("LR-77")) {
                  shift((ObjectNode) run, "offBelt", -45);
                }
              }
            });

    ChangeList changes = ChangeList.of(plan, "demo-1", Optional.of(before));

    assertThat(changes.promises())
        .singleElement()
        .satisfies(
            promise -> {
              assertThat(promise.order()).isEqualTo("LR-77");
              assertThat(promise.lateMinutesBefore()).isZero();
              assertThat(promise.lateMinutes()).isEqualTo(40);
            });
  }

  @Test
  void aFirstPlanHasNothingToChange() {
    ChangeList changes = ChangeList.of(plan, null, Optional.empty());

    assertThat(changes.stability().runs()).isZero();
    assertThat(changes.added()).hasSize(plan.sheet().runs().size());
  }

  @Test
  void itIsSaidInASentenceWhereARunMovesAndWhatItCosts() throws JsonProcessingException {
    PlanSheet before =
        before(
            sheet -> {
              shift(run(sheet, 0), "setUpStart", -150);
              run(sheet, 0).put("press", "P3");
              ((ObjectNode) sheet.get("score")).put("lateMinutes", 10).put("totalCost", 200.0);
              ((ObjectNode) sheet.get("score").get("cost")).put("setUp", 160.0);
            });

    ChangeList changes = ChangeList.of(plan, "demo-1", Optional.of(before));

    assertThat(changes.moved().get(0).text())
        .isEqualTo(
            "HC-2041 crest, front moves from P3, Tue 1 Dec 03:40, to P1, Tue 1 Dec 06:10,"
                + " 2 h 30 min later.");
    assertThat(changes.cost().text()).isEqualTo("+30 late minutes, +11.50 EUR.");
    assertThat(changes.cost().kinds())
        .filteredOn(kind -> kind.kind().equals("setUp"))
        .containsExactly(new CostChange.Kind("setUp", 160, 168, 8));
  }

  @Test
  void twoNeighboursThatSwapAreCounted() throws JsonProcessingException {
    PlanSheet before =
        before(
            sheet -> {
              // crest and roster the other way round on P1
              shift(run(sheet, 0), "setUpStart", 200);
              shift(run(sheet, 1), "setUpStart", -120);
            });

    Stability stability = ChangeList.of(plan, "demo-1", Optional.of(before)).stability();

    assertThat(stability.swappedOrders()).isEqualTo(1);
    assertThat(stability.runsMoved()).isEqualTo(2);
    assertThat(stability.pressChanges()).isZero();
  }

  @Test
  void anOrderThatLosesItsPlaceHasAWorsePromiseAndOneThatFindsItABetterOne()
      throws JsonProcessingException {
    PlanSheet before =
        before(
            sheet -> {
              ObjectNode unplaced = (ObjectNode) sheet.get("unplaced").get(0);
              unplaced.put("order", "MB-118");
              ObjectNode placed = run(sheet, 0).deepCopy();
              placed.put("id", "RU-5-stride-back-1").put("order", "RU-5");
              ((ArrayNode) sheet.get("runs")).add(placed);
            });

    ChangeList changes = ChangeList.of(plan, "demo-1", Optional.of(before));

    assertThat(changes.promises())
        .extracting(PromiseChange::order, PromiseChange::worse)
        .containsExactly(tuple("RU-5", true), tuple("MB-118", false));
    assertThat(changes.promises().get(0).text())
        .startsWith("RU-5 has no place: the cloth does not discharge")
        .endsWith("before: Tue 1 Dec 08:27, on time.");
    assertThat(changes.promises().get(0).finish()).isNull();
    assertThat(changes.promises().get(1).finishBefore()).isNull();
  }

  @Test
  void aNewOrderThatWouldBeLateIsAmongThePromises() throws JsonProcessingException {
    PlanSheet before =
        before(
            sheet -> {
              ((ArrayNode) sheet.get("runs")).remove(2);
              ((ArrayNode) sheet.get("late")).removeAll();
            });

    assertThat(ChangeList.of(plan, "demo-1", Optional.of(before)).promises())
        .singleElement()
        .satisfies(
            promise -> {
              assertThat(promise.worse()).isTrue();
              assertThat(promise.text())
                  .isEqualTo("LR-77 is new and ends Tue 1 Dec 12:40, 40 min late.");
            });
  }

  @Test
  void aLaterEndBeforeTheDueDateIsNoWorsePromise() throws JsonProcessingException {
    PlanSheet before = before(sheet -> shift(run(sheet, 1), "offBelt", -60));

    assertThat(ChangeList.of(plan, "demo-1", Optional.of(before)).promises())
        .extracting(PromiseChange::order, PromiseChange::worse)
        .containsExactly(tuple("HC-2041", false));
  }

  @Test
  void inkThatIsActivatedAndNoLongerDrawnIsTold() throws JsonProcessingException {
    // planned at seven: brick-1 is activated, and roster draws on it no more
    ObjectNode sheet = MAPPER.valueToTree(plan.sheet());
    sheet.put("plannedAt", "2026-12-01T07:00:00+01:00");
    ObjectNode batch = (ObjectNode) sheet.get("batches").get(2);
    ((ArrayNode) batch.get("uses")).remove(1);
    batch.put("reserveG", 50 + 780);
    PlanIndex now =
        new PlanIndex(
            PlanFixture.shop(), PlanFixture.orders(), MAPPER.treeToValue(sheet, PlanSheet.class));

    ChangeList changes = ChangeList.of(now, "demo-1", Optional.of(plan.sheet()));

    assertThat(changes.inkLost())
        .singleElement()
        .satisfies(
            loss -> {
              assertThat(loss.batch()).isEqualTo("brick-1");
              assertThat(loss.grams()).isEqualTo(780);
              assertThat(loss.runs()).containsExactly("HC-2041 roster, back");
              assertThat(loss.text()).contains("780 g of brick in brick-1 would be lost");
            });
    assertThat(ChangeList.of(plan, "demo-1", Optional.of(plan.sheet())).inkLost()).isEmpty();
  }
}
