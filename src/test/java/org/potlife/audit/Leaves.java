package org.potlife.audit;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.function.UnaryOperator;

/** Walks over all fields of nested records and lists, and changes one of them. */
final class Leaves {

  private final BiPredicate<String, Object> wanted;
  private final UnaryOperator<Object> change;
  private int seen;
  private int target;
  private String path;

  Leaves(BiPredicate<String, Object> wanted, UnaryOperator<Object> change) {
    this.wanted = wanted;
    this.change = change;
  }

  /** The record with its n-th wanted field changed, or the record itself when there is none. */
  <R extends Record> R changed(R record, int n) {
    seen = 0;
    target = n;
    path = null;
    @SuppressWarnings("unchecked")
    R copy = (R) walk(record, "");
    return copy;
  }

  /** Where the last change was made; null when there was none. */
  String path() {
    return path;
  }

  private Object walk(Object value, String at) {
    if (path != null || value == null) {
      return value;
    }
    if (value instanceof Record line) {
      return walkRecord(line, at);
    }
    if (value instanceof List<?> list) {
      List<Object> copy = new ArrayList<>(list);
      for (int i = 0; i < list.size() && path == null; i++) {
        copy.set(i, walk(list.get(i), at + "[" + i + "]"));
      }
      return path == null ? value : copy;
    }
    return value;
  }

  private Object walkRecord(Record line, String at) {
    for (RecordComponent component : line.getClass().getRecordComponents()) {
      Object part = value(component, line);
      String name = at + "." + component.getName();
      if (part != null && wanted.test(component.getName(), part)) {
        if (component.getType().isPrimitive() && change.apply(part) == null) {
          continue;
        }
        if (seen++ == target) {
          path = name;
          return Edit.with(line, component.getName(), change.apply(part));
        }
      }
      Object inner = walk(part, name);
      if (path != null) {
        return Edit.with(line, component.getName(), inner);
      }
    }
    return line;
  }

  static Object value(RecordComponent component, Record line) {
    try {
      return component.getAccessor().invoke(line);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }
}
