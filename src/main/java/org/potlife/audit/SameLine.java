package org.potlife.audit;

import java.lang.reflect.RecordComponent;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** Compares two lines of sheets field by field; times are compared as instants, not as text. */
final class SameLine {

  private SameLine() {}

  /** Names of the fields that differ, save those that may. */
  static List<String> differences(Record one, Record other, Set<String> mayChange) {
    List<String> differing = new ArrayList<>();
    for (RecordComponent component : one.getClass().getRecordComponents()) {
      if (!mayChange.contains(component.getName())
          && !same(value(component, one), value(component, other), mayChange)) {
        differing.add(component.getName());
      }
    }
    return differing;
  }

  private static boolean same(Object one, Object other, Set<String> mayChange) {
    if (one instanceof OffsetDateTime a && other instanceof OffsetDateTime b) {
      return a.isEqual(b);
    }
    if (one instanceof Record a && other instanceof Record b && a.getClass() == b.getClass()) {
      return differences(a, b, mayChange).isEmpty();
    }
    if (one instanceof List<?> a && other instanceof List<?> b) {
      boolean same = a.size() == b.size();
      for (int i = 0; same && i < a.size(); i++) {
        same = same(a.get(i), b.get(i), mayChange);
      }
      return same;
    }
    return Objects.equals(one, other);
  }

  private static Object value(RecordComponent component, Record record) {
    try {
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("the lines of a sheet are public records", e);
    }
  }
}
