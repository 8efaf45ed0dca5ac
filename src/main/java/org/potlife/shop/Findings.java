package org.potlife.shop;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ObjIntConsumer;
import org.potlife.platform.problem.FieldError;

/**
 * Collects what is wrong with a set-up. Missing values are none of its business: they are reported
 * by the constraints of the records, so every comparison with one is taken as fine.
 */
final class Findings {

  private final List<FieldError> errors = new ArrayList<>();

  void add(String pointer, String detail) {
    errors.add(new FieldError(pointer, detail));
  }

  List<FieldError> list() {
    return List.copyOf(errors);
  }

  /** Visits the elements that are there, with their numbers. */
  static <T> void each(List<T> list, ObjIntConsumer<T> visit) {
    for (int i = 0; list != null && i < list.size(); i++) {
      if (list.get(i) != null) {
        visit.accept(list.get(i), i);
      }
    }
  }

  /** Names that must not repeat. */
  <T> void unique(List<T> list, Function<T, String> name, String pointer, String field) {
    Set<String> seen = new HashSet<>();
    each(
        list,
        (element, i) -> {
          String own = name.apply(element);
          if (own != null && !seen.add(own)) {
            add(pointer + "/" + i + "/" + field, "must be unique, " + own + " occurs before");
          }
        });
  }

  static boolean above(Number value, Number limit) {
    return value != null && limit != null && value.doubleValue() > limit.doubleValue();
  }

  static boolean below(Number value, Number limit) {
    return above(limit, value);
  }

  /** A number as people write it: 97, not 97.0. */
  static String plain(double value) {
    return BigDecimal.valueOf(value)
        .setScale(4, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
