package org.potlife.audit;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;

/** Copies of records with one field changed, for breaking good plans in one place. */
final class Edit {

  private Edit() {}

  /** The record with other values: names and values in turn. */
  static <R extends Record> R with(R record, Object... namesAndValues) {
    try {
      RecordComponent[] components = record.getClass().getRecordComponents();
      Object[] values = new Object[components.length];
      Class<?>[] types = new Class<?>[components.length];
      List<Object> unknown = new ArrayList<>();
      for (int k = 0; k < namesAndValues.length; k += 2) {
        unknown.add(namesAndValues[k]);
      }
      for (int i = 0; i < components.length; i++) {
        types[i] = components[i].getType();
        values[i] = components[i].getAccessor().invoke(record);
        for (int k = 0; k < namesAndValues.length; k += 2) {
          if (components[i].getName().equals(namesAndValues[k])) {
            values[i] = namesAndValues[k + 1];
            unknown.remove(namesAndValues[k]);
          }
        }
      }
      if (!unknown.isEmpty()) {
        throw new IllegalArgumentException(record.getClass() + " has no " + unknown);
      }
      @SuppressWarnings("unchecked")
      R copy = (R) record.getClass().getDeclaredConstructor(types).newInstance(values);
      return copy;
    } catch (ReflectiveOperationException e) {
      throw new IllegalArgumentException(Arrays.toString(namesAndValues), e);
    }
  }

  /** The list with its element at {@code index} changed. */
  static <T> List<T> at(List<T> list, int index, UnaryOperator<T> change) {
    List<T> copy = new ArrayList<>(list);
    copy.set(index, change.apply(copy.get(index)));
    return copy;
  }

  /** The list with every element changed. */
  static <T> List<T> each(List<T> list, UnaryOperator<T> change) {
    return list.stream().map(change).toList();
  }

  static <T> List<T> plus(List<T> list, T element) {
    List<T> copy = new ArrayList<>(list);
    copy.add(element);
    return copy;
  }

  static <T> List<T> without(List<T> list, int index) {
    List<T> copy = new ArrayList<>(list);
    copy.remove(index);
    return copy;
  }
}
