package org.potlife.platform.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.potlife.platform.problem.FieldError;

/**
 * Compares a tree with the record that it should become: unknown fields, values of a wrong type,
 * values that their type cannot hold. What does not fit is taken out of the tree, so that the rest
 * can be bound and checked as well.
 */
final class JsonShape {

  private final List<FieldError> errors = new ArrayList<>();

  /** All misfits of the tree; empties the tree of them. */
  static List<FieldError> misfits(JsonNode tree, Class<?> type) {
    JsonShape shape = new JsonShape();
    if (tree.isNull()) {
      shape.misfit("", "must not be null");
    } else {
      shape.fits(tree, type, "");
    }
    return shape.errors;
  }

  /** The same for a tree that should become a list. */
  static List<FieldError> listMisfits(JsonNode tree, Class<?> element) {
    JsonShape shape = new JsonShape();
    shape.fitsList(tree, element, "");
    return shape.errors;
  }

  private boolean fits(JsonNode node, Type type, String pointer) {
    if (node.isNull()) {
      return true;
    }
    if (type instanceof ParameterizedType generic) {
      return generic.getRawType() == Map.class
          ? fitsMap(node, generic.getActualTypeArguments()[1], pointer)
          : fitsList(node, generic.getActualTypeArguments()[0], pointer);
    }
    Class<?> wanted = (Class<?>) type;
    if (wanted.isRecord()) {
      return fitsRecord(node, wanted, pointer);
    }
    if (JsonNode.class.isAssignableFrom(wanted)) {
      return fitsAnything(node, pointer);
    }
    return scalar(JsonScalar.fault(node, wanted), pointer);
  }

  private boolean scalar(String fault, String pointer) {
    return fault == null || misfit(pointer, fault);
  }

  private boolean fitsRecord(JsonNode node, Class<?> wanted, String pointer) {
    if (!(node instanceof ObjectNode object)) {
      return misfit(pointer, "must be an object, was " + JsonScalar.describe(node));
    }
    Map<String, Type> components = new LinkedHashMap<>();
    for (RecordComponent component : wanted.getRecordComponents()) {
      components.put(component.getName(), component.getGenericType());
    }
    for (String name : names(object)) {
      String child = FieldError.child(pointer, JsonText.echo(name));
      Type type = components.get(name);
      boolean fits =
          type == null
              ? misfit(child, "is not known here; known are " + known(components))
              : fits(object.get(name), type, child);
      if (!fits) {
        object.remove(name);
      }
    }
    return true;
  }

  private static String known(Map<String, Type> components) {
    return components.keySet().stream().collect(Collectors.joining(", "));
  }

  private boolean fitsList(JsonNode node, Type element, String pointer) {
    if (!(node instanceof ArrayNode array)) {
      return misfit(pointer, "must be an array, was " + JsonScalar.describe(node));
    }
    for (int i = 0; i < array.size(); i++) {
      if (!fits(array.get(i), element, pointer + "/" + i)) {
        array.set(i, NullNode.getInstance());
      }
    }
    return true;
  }

  private boolean fitsMap(JsonNode node, Type value, String pointer) {
    if (!(node instanceof ObjectNode object)) {
      return misfit(pointer, "must be an object, was " + JsonScalar.describe(node));
    }
    for (String name : names(object)) {
      String child = FieldError.child(pointer, JsonText.echo(name));
      if (!scalar(JsonText.fault(name), child) || !fits(object.get(name), value, child)) {
        object.remove(name);
      }
    }
    return true;
  }

  /** Free-form content: any JSON whose texts and numbers can be stored. */
  private boolean fitsAnything(JsonNode node, String pointer) {
    if (node.isContainerNode()) {
      return node.isArray()
          ? fitsList(node, JsonNode.class, pointer)
          : fitsMap(node, JsonNode.class, pointer);
    }
    Class<?> own = node.isTextual() ? String.class : node.isNumber() ? Double.class : null;
    return own == null || scalar(JsonScalar.fault(node, own), pointer);
  }

  private static List<String> names(ObjectNode object) {
    String[] names = new String[object.size()];
    int i = 0;
    for (var entry : object.properties()) {
      names[i++] = entry.getKey();
    }
    return Arrays.asList(names);
  }

  private boolean misfit(String pointer, String detail) {
    errors.add(new FieldError(pointer, detail));
    return false;
  }
}
