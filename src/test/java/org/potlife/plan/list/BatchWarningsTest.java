package org.potlife.plan.list;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.plan.PlanFixture.at;

import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.potlife.plan.PlanFixture;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.UseLine;

/** What the ink room is told beside a batch. The usual plant wants 30 min to spare. */
class BatchWarningsTest {

  private final PlanIndex plan = PlanFixture.index();

  @Test
  void aUseThatEndsWellBeforeTheBatchMustBeGoneNeedsNoWord() {
    assertThat(warnings("14:02")).isEmpty();
  }

  @Test
  void aUseThatEndsCloseToItIsNamedWithTheMinutesLeft() {
    assertThat(warnings("14:31"))
        .singleElement()
        .asString()
        .contains("takes the last of it 5 min before it must be gone");
  }

  @Test
  void noMinuteLeftIsNotCalledNoTimeAtAll() {
    assertThat(warnings("14:35:40"))
        .singleElement()
        .asString()
        .contains("takes the last of it less than a minute before it must be gone");
  }

  /** Of a batch that must be gone at 14:36, with its last use until then. */
  private List<String> warnings(String until) {
    BatchLine batch = plan.findBatch("brick-1").orElseThrow();
    assertThat(batch.useBy()).isEqualTo(at("14:36"));
    UseLine first = batch.uses().get(0);
    return BatchWarnings.of(plan, until(batch, first, at(until)));
  }

  private static BatchLine until(BatchLine batch, UseLine use, OffsetDateTime end) {
    return new BatchLine(
        batch.id(),
        batch.ink(),
        batch.process(),
        batch.massG(),
        batch.components(),
        batch.agentG(),
        batch.agentPercent(),
        batch.retarderG(),
        batch.mixFrom(),
        batch.activateFrom(),
        batch.activatedAt(),
        batch.readyAt(),
        batch.useBy(),
        batch.mixer(),
        batch.reserveG(),
        batch.runs(),
        List.of(new UseLine(use.run(), use.from(), end, use.printG(), use.chargeG())),
        null,
        null);
  }
}
