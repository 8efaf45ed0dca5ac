package org.potlife.room.internal;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.potlife.event.ShopEvent;
import org.potlife.room.ScreenLife;
import org.potlife.room.ScreenStatus.Mark;

/** What was reported of screens and frames, in the order of time. */
final class ScreenHistory {

  private final Map<String, List<Mark>> byScreen = new LinkedHashMap<>();
  private final Map<String, Mark> tensionByFrame = new HashMap<>();

  private ScreenHistory() {}

  /** The history that events tell, given by their time. */
  static ScreenHistory of(List<ShopEvent> events, ZoneId zone) {
    ScreenHistory history = new ScreenHistory();
    for (ShopEvent event : events) {
      Mark mark = mark(event, zone);
      String screen = text(event.data(), "screen");
      if (screen != null) {
        history.byScreen.computeIfAbsent(screen, s -> new ArrayList<>()).add(mark);
      }
      if (mark.newtonPerCm() != null && mark.frame() != null) {
        history.tensionByFrame.put(mark.frame(), mark);
      }
    }
    return history;
  }

  private static Mark mark(ShopEvent event, ZoneId zone) {
    JsonNode data = event.data();
    String state = text(data, "state");
    return new Mark(
        event.time().atZone(zone).toOffsetDateTime(),
        event.type(),
        event.type().equals("screen.broken")
            ? ScreenLife.BROKEN
            : state == null ? null : ScreenLife.of(state),
        text(data, "frame"),
        data.hasNonNull("newtonPerCm") ? data.get("newtonPerCm").doubleValue() : null,
        data.hasNonNull("dry") ? data.get("dry").booleanValue() : null,
        text(data, "person"));
  }

  private static String text(JsonNode data, String field) {
    return data.hasNonNull(field) ? data.get(field).textValue() : null;
  }

  /** The same without what was reported of a screen before a moment: an earlier one of its name. */
  ScreenHistory without(String screen, OffsetDateTime before) {
    ScreenHistory shorter = new ScreenHistory();
    shorter.byScreen.put(
        screen, list(screen).stream().filter(mark -> !mark.at().isBefore(before)).toList());
    shorter.tensionByFrame.putAll(tensionByFrame);
    return shorter;
  }

  /** Screens of which something was reported, in the order in which they were first named. */
  Set<String> screens() {
    return byScreen.keySet();
  }

  /** What was reported of a screen. */
  List<Mark> list(String screen) {
    return List.copyOf(byScreen.getOrDefault(screen, List.of()));
  }

  /** The last report of where the screen is in its life. */
  Optional<Mark> lastState(String screen) {
    return list(screen).stream().filter(mark -> mark.state() != null).reduce((a, b) -> b);
  }

  /** The last frame that was named with the screen. */
  Optional<String> frame(String screen) {
    return list(screen).stream().map(Mark::frame).filter(f -> f != null).reduce((a, b) -> b);
  }

  /** The last tension of the screen itself or of its frame. */
  Optional<Mark> tension(String screen) {
    Optional<Mark> own =
        list(screen).stream().filter(mark -> mark.newtonPerCm() != null).reduce((a, b) -> b);
    Optional<Mark> ofFrame = frame(screen).map(tensionByFrame::get);
    return own.isEmpty() || (ofFrame.isPresent() && ofFrame.get().at().isAfter(own.get().at()))
        ? ofFrame
        : own;
  }
}
