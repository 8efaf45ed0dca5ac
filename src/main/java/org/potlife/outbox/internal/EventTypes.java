package org.potlife.outbox.internal;

import java.util.List;
import java.util.regex.Pattern;
import org.potlife.event.ShopEvent;

/**
 * Which types somebody wants to hear of: names such as plan.published, or all of a kind such as
 * plan.*; with or without the prefix. None named means all.
 */
record EventTypes(List<String> names) {

  static final EventTypes ALL = new EventTypes(List.of());

  private static final Pattern NAME = Pattern.compile("[a-z][a-z-]*\\.(?:[a-z][a-z-]*|\\*)");

  EventTypes {
    names = names.stream().map(EventTypes::bare).distinct().toList();
  }

  /** Names separated by commas; empty or null for all. */
  static EventTypes parse(String list) {
    return list == null || list.isBlank()
        ? ALL
        : new EventTypes(List.of(list.split(",")).stream().map(String::strip).toList());
  }

  /** Names that cannot be those of types. */
  List<String> misnamed() {
    return names.stream().filter(name -> !NAME.matcher(name).matches()).toList();
  }

  /**
   * @param type without prefix
   */
  boolean wants(String type) {
    return names.isEmpty()
        || names.contains(type)
        || names.contains(type.substring(0, type.indexOf('.') + 1) + "*");
  }

  private static String bare(String name) {
    return name.startsWith(ShopEvent.PREFIX) ? name.substring(ShopEvent.PREFIX.length()) : name;
  }
}
