package org.potlife.web.room;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/**
 * A touch that tells one thing.
 *
 * @param type type of the shop event, without prefix
 * @param source room that tells it
 * @param name what the notice calls it
 * @param data data of the event, or of several, as JSON
 */
public record MarkButton(String type, String source, String name, String data) {

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  /** A mark on one thing. */
  static MarkButton of(String type, String source, String name, String field, String id) {
    return new MarkButton(type, source, name, JSON.objectNode().put(field, id).toString());
  }

  /** The same new state for several screens. */
  static MarkButton moved(String name, List<String> screens, String state) {
    ArrayNode all = JSON.arrayNode();
    screens.forEach(screen -> all.add(JSON.objectNode().put("screen", screen).put("state", state)));
    return new MarkButton("screen.moved", "screen-room", name, all.toString());
  }

  /** A look at a drying screen. */
  static MarkButton look(String name, String screen, boolean dry) {
    ObjectNode data = JSON.objectNode().put("screen", screen).put("dry", dry);
    return new MarkButton("emulsion.reading", "screen-room", name, data.toString());
  }
}
