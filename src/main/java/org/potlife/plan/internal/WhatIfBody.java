package org.potlife.plan.internal;

import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.potlife.order.Order;
import org.potlife.planning.WhatIf.DueAt;
import org.potlife.planning.WhatIf.FurtherShift;
import org.potlife.planning.WhatIf.PressDown;
import org.potlife.planning.WhatIf.Question;
import org.potlife.platform.problem.FieldError;
import org.potlife.shop.Press;
import org.potlife.shop.Shift;
import org.potlife.shop.Shop;

/**
 * One question: an order with {@code dueAt}, a press with {@code downFrom} and {@code downTo}, or a
 * press with a {@code shift}.
 *
 * @param solveSeconds search time, seconds, 0 to 5, default 1
 */
record WhatIfBody(
    @Schema(description = "The order that would be due at dueAt") String order,
    OffsetDateTime dueAt,
    @Schema(description = "The press that would be down, or staffed in a further shift")
        String press,
    OffsetDateTime downFrom,
    OffsetDateTime downTo,
    @Valid Shift shift,
    @Min(0) @Max(5) @Schema(description = "Search time, seconds; default 1") Integer solveSeconds) {

  private static final int DEFAULT_SECONDS = 1;

  private static final String GIVEN = "must be given";
  private static final String APART = "belongs to another question; ask one thing at a time";

  /** What is wrong with the question itself. */
  List<FieldError> check() {
    boolean due = order != null || dueAt != null;
    boolean down = downFrom != null || downTo != null;
    long questions = Stream.of(due, down, shift != null).filter(asked -> asked).count();
    if (questions == 0) {
      return List.of(
          new FieldError(
              "",
              "must ask one thing: order with dueAt, press with downFrom and downTo, or press with"
                  + " shift"));
    }
    List<FieldError> errors = new ArrayList<>();
    if (due) {
      need(errors, order, "/order");
      need(errors, dueAt, "/dueAt");
      leave(errors, press, "/press");
      leave(errors, downFrom, "/downFrom");
      leave(errors, downTo, "/downTo");
      leave(errors, shift, "/shift");
    } else {
      need(errors, press, "/press");
      if (down) {
        need(errors, downFrom, "/downFrom");
        need(errors, downTo, "/downTo");
        leave(errors, shift, "/shift");
        if (downFrom != null && downTo != null && !downTo.isAfter(downFrom)) {
          errors.add(new FieldError("/downTo", "must be after downFrom"));
        }
      }
    }
    return errors;
  }

  private static void need(List<FieldError> errors, Object value, String pointer) {
    if (value == null) {
      errors.add(new FieldError(pointer, GIVEN));
    }
  }

  private static void leave(List<FieldError> errors, Object value, String pointer) {
    if (value != null) {
      errors.add(new FieldError(pointer, APART));
    }
  }

  /** What the plant does not have of it. */
  List<FieldError> check(Shop shop, List<Order> open) {
    if (order != null && open.stream().noneMatch(each -> each.reference().equals(order))) {
      return List.of(new FieldError("/order", "is no open order of this plant, was " + order));
    }
    if (press != null && shop.findPress(press).isEmpty()) {
      return List.of(
          new FieldError(
              "/press",
              "names no press of this plant, was "
                  + press
                  + "; there are "
                  + String.join(", ", shop.presses().stream().map(Press::id).toList())));
    }
    return List.of();
  }

  Question question() {
    if (order != null) {
      return new DueAt(order, dueAt);
    }
    return shift == null ? new PressDown(press, downFrom, downTo) : new FurtherShift(press, shift);
  }

  int seconds() {
    return solveSeconds == null ? DEFAULT_SECONDS : solveSeconds;
  }
}
