package org.potlife.event;

import java.util.Comparator;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.potlife.platform.access.Roles;

/**
 * Who may tell what. A type is found by the longest beginning that fits it; what is not listed is
 * for planners alone, who may tell everything.
 */
public final class EventReporters {

  private static final Map<String, Set<String>> BY_BEGINNING =
      Map.ofEntries(
          Map.entry("order.", Set.of(Roles.ERP)),
          Map.entry("garments.", Set.of(Roles.ERP)),
          Map.entry("trial-print.", Set.of(Roles.PRESS)),
          Map.entry("run.", Set.of(Roles.PRESS)),
          Map.entry("run.ink-used", Set.of(Roles.INK_ROOM, Roles.PRESS)),
          Map.entry("press.", Set.of(Roles.PRESS)),
          Map.entry("dryer.", Set.of(Roles.PRESS)),
          Map.entry("batch.", Set.of(Roles.INK_ROOM)),
          Map.entry("ink.", Set.of(Roles.INK_ROOM)),
          Map.entry("climate.", Set.of(Roles.SCREEN_ROOM)),
          Map.entry("emulsion.", Set.of(Roles.SCREEN_ROOM)),
          Map.entry("screen.", Set.of(Roles.SCREEN_ROOM)),
          // it breaks on the press as often as in the screen room
          Map.entry("screen.broken", Set.of(Roles.SCREEN_ROOM, Roles.PRESS)),
          Map.entry("screen.moved", Set.of(Roles.SCREEN_ROOM, Roles.PRESS)));

  private static final Set<String> PLANNERS = Set.of(Roles.PLANNER);

  private EventReporters() {}

  /**
   * The roles that may tell events of a type.
   *
   * @param type without prefix, for example batch.mixed
   */
  public static Set<String> of(String type) {
    Set<String> roles = new TreeSet<>(PLANNERS);
    BY_BEGINNING.entrySet().stream()
        .filter(entry -> type.startsWith(entry.getKey()))
        .max(Comparator.comparingInt(entry -> entry.getKey().length()))
        .ifPresent(entry -> roles.addAll(entry.getValue()));
    return roles;
  }
}
