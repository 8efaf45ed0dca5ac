package org.potlife.plan.list;

import static org.assertj.core.api.Assertions.assertThat;

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

    assertThat(changes.runs()).isEqualTo(plan.sheet().runs().size());
    assertThat(changes.moved()).isEmpty();
    assertThat(changes.movedPercent()).isZero();
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
    assertThat(changes.pressChanges()).isEqualTo(1);
    assertThat(changes.movedPercent()).isEqualTo(20.0);
    // 30 min over the root of 1 + hours until the old start, over all five runs; by hand
    double hours =
        (before.runs().get(0).setUpStart().toEpochSecond()
                - plan.sheet().plannedAt().toEpochSecond())
            / 3600.0;
    assertThat(changes.meanWeightedShiftMinutes())
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

    assertThat(changes.runs()).isZero();
    assertThat(changes.added()).hasSize(plan.sheet().runs().size());
  }
}
