package org.potlife.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.potlife.sheet.PlanSheet;

/** Sheets with missing, dropped, doubled and swapped parts: the audit never throws. */
class IllegibleSheetTest {

  /** Fields without which a plan can still be worked by. */
  private static final Set<String> MAY_BE_MISSING =
      Set.of("customer", "behind", "latestFrom", "cost");

  @Test
  void whatMustBeThereAndIsMissingIsAlwaysFound() {
    Leaves missing = new Leaves((name, value) -> true, value -> null);
    int field = 0;
    for (; ; field++) {
      PlanSheet sheet = missing.changed(GoodPlan.sheet(), field);
      if (missing.path() == null) {
        break;
      }
      AuditReport report = audit(sheet, Optional.of(GoodPlan.sheet()));
      String name = missing.path().substring(missing.path().lastIndexOf('.') + 1);
      if (!MAY_BE_MISSING.contains(name)) {
        assertThat(report.findings()).as(missing.path()).isNotEmpty();
      }
    }
    assertThat(field).isGreaterThan(400);
  }

  @RepeatedTest(10)
  void noisySheetsNeverMakeItThrow(RepetitionInfo repetition) {
    Random random = new Random(repetition.getCurrentRepetition());
    for (int i = 0; i < 100; i++) {
      PlanSheet sheet = GoodPlan.sheet();
      PlanSheet published = GoodPlan.sheet();
      for (int change = random.nextInt(4); change >= 0; change--) {
        sheet = (PlanSheet) Noise.in(sheet, random);
        published = (PlanSheet) Noise.in(published, random);
      }
      AuditReport report = audit(sheet, Optional.of(published));
      assertThat(report.rules()).hasSize(25);
    }
  }

  private static AuditReport audit(PlanSheet sheet, Optional<PlanSheet> published) {
    return Audit.of(SmallShop.shop(), SmallShop.orders(), sheet, published);
  }

  /** Changes something somewhere. */
  private static final class Noise {

    private Noise() {}

    static Object in(Object value, Random random) {
      if (value == null || random.nextInt(12) == 0 && !(value instanceof PlanSheet)) {
        return null;
      }
      if (value instanceof Record line) {
        RecordComponent[] components = line.getClass().getRecordComponents();
        RecordComponent component = components[random.nextInt(components.length)];
        Object part = in(Leaves.value(component, line), random);
        return part == null && component.getType().isPrimitive()
            ? line
            : Edit.with(line, component.getName(), part);
      }
      if (value instanceof List<?> list) {
        return inList(list, random);
      }
      return inValue(value, random);
    }

    private static List<Object> inList(List<?> list, Random random) {
      List<Object> copy = new ArrayList<>(list);
      if (copy.isEmpty()) {
        copy.add(null);
        return copy;
      }
      int at = random.nextInt(copy.size());
      switch (random.nextInt(8)) {
        case 0 -> copy.remove(at);
        case 1 -> copy.add(copy.get(at));
        case 2 -> Collections.shuffle(copy, random);
        default -> copy.set(at, in(copy.get(at), random));
      }
      return copy;
    }

    private static Object inValue(Object value, Random random) {
      if (value instanceof OffsetDateTime time) {
        boolean extreme = Math.abs(time.getYear()) > 10_000;
        return switch (extreme ? 0 : random.nextInt(6)) {
          case 0 -> OffsetDateTime.MAX;
          case 1 -> OffsetDateTime.MIN;
          case 2 -> time.plusDays(random.nextInt(2000) - 1000);
          default -> time.plusSeconds(random.nextInt(20_000) - 10_000);
        };
      }
      if (value instanceof java.time.LocalDate) {
        return random.nextBoolean() ? java.time.LocalDate.MAX : java.time.LocalDate.MIN;
      }
      if (value instanceof Integer) {
        int[] odd = {0, -1, 1, Integer.MAX_VALUE, Integer.MIN_VALUE, 7};
        return odd[random.nextInt(odd.length)];
      }
      if (value instanceof Long) {
        long[] odd = {0, -1, Long.MAX_VALUE, Long.MIN_VALUE};
        return odd[random.nextInt(odd.length)];
      }
      if (value instanceof Double) {
        double[] odd = {0, -1, Double.NaN, Double.POSITIVE_INFINITY, 1e300, 1e-300};
        return odd[random.nextInt(odd.length)];
      }
      if (value instanceof Boolean flag) {
        return !flag;
      }
      return value instanceof String ? "x%s%d" : value;
    }
  }
}
