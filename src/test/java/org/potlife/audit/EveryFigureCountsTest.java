package org.potlife.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.potlife.sheet.PlanSheet;

/** Changes each figure of the good plan in turn: none of them can be wrong without a finding. */
class EveryFigureCountsTest {

  @Test
  void noTimeCanBeTenMinutesLaterUnlessThereIsFreeTime() {
    assertThat(unnoticed(OffsetDateTime.class, time -> ((OffsetDateTime) time).plusMinutes(10)))
        .containsExactlyInAnyOrder(
            // an empty belt may run on
            ".belts[0].to",
            ".belts[1].to",
            ".belts[6].to",
            ".horizonEnd",
            // the first screens go into the cabinet while the load is still gathered
            ".screens[0].steps[1].from",
            ".screens[1].steps[1].from");
  }

  @Test
  void noTimeCanBeTenMinutesEarlierUnlessThereIsFreeTime() {
    assertThat(unnoticed(OffsetDateTime.class, time -> ((OffsetDateTime) time).minusMinutes(10)))
        .containsExactlyInAnyOrder(
            // mixed ink without agent may stand
            ".batches[1].mixFrom",
            ".batches[3].mixFrom",
            // an empty belt may start early
            ".belts[0].from",
            ".belts[1].from",
            ".belts[2].from",
            ".horizonEnd",
            ".plannedAt");
  }

  @Test
  void noWholeNumberCanBeLarger() {
    assertThat(unnoticed(Integer.class, number -> (Integer) number + 20)).isEmpty();
  }

  @Test
  void noNameCanBeAnotherButTextForPeople() {
    assertThat(unnoticed(String.class, name -> name + "x"))
        .allMatch(path -> path.endsWith(".customer") || path.endsWith(".cause"));
  }

  private static TreeSet<String> unnoticed(Class<?> type, UnaryOperator<Object> change) {
    TreeSet<String> unnoticed = new TreeSet<>();
    Leaves leaves = new Leaves((name, value) -> type.isInstance(value), change);
    for (int n = 0; ; n++) {
      PlanSheet sheet = leaves.changed(GoodPlan.sheet(), n);
      if (leaves.path() == null) {
        return unnoticed;
      }
      AuditReport report = Audit.of(SmallShop.shop(), SmallShop.orders(), sheet, Optional.empty());
      if (report.passed()) {
        unnoticed.add(leaves.path());
      }
    }
  }
}
