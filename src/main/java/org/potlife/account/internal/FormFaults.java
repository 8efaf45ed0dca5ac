package org.potlife.account.internal;

import java.util.LinkedHashMap;
import java.util.Map;

/** What is wrong with the fields of a form, by the field's name, in the order of the form. */
public final class FormFaults {

  private final Map<String, String> faults = new LinkedHashMap<>();

  static FormFaults none() {
    return new FormFaults();
  }

  FormFaults add(String field, String fault) {
    faults.putIfAbsent(field, fault);
    return this;
  }

  public boolean isAny() {
    return !faults.isEmpty();
  }

  /** Field and fault. */
  public Map<String, String> all() {
    return faults;
  }

  /** What is wrong with a field; null when it is good. */
  public String of(String field) {
    return faults.get(field);
  }
}
