package org.potlife.reliability;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Bodies that nobody should send: good ones bent in one to three places, and plain noise. */
final class Nonsense {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** Values that have hurt somebody before. */
  private static final List<String> VALUES =
      List.of(
          "null",
          "true",
          "-1",
          "0",
          "1e400",
          "-1E-20000",
          "9223372036854775808",
          "2147483648",
          "0.1",
          "1e18",
          "[]",
          "{}",
          "[[]]",
          "{\"a\":{\"b\":1}}",
          "\"\"",
          "\" \"",
          "\"\\u0000\"",
          "\"a\\u0000b\"",
          "\"\\ud800\"",
          "\"\\uffff\"",
          "\"\\u202Eesrever\"",
          "\"'; drop table plan; --\"",
          "\"../../etc\"",
          "\"<b onclick=x>\"",
          "\"2026-02-30T00:00:00Z\"",
          "\"+999999999-12-31T23:59:59+18:00\"",
          "\"-999999999-01-01T00:00:00-18:00\"",
          "\"0000-00-00\"",
          "\"PT99999999999H\"",
          "\"25:00\"",
          "\"Mars/Olympus\"",
          "\"NaN\"");

  private final SplittableRandom random;

  Nonsense(long seed) {
    random = new SplittableRandom(seed);
  }

  /** A body made from a good one. */
  byte[] from(String good) throws JsonProcessingException {
    int kind = random.nextInt(20);
    if (kind == 0) {
      return noise();
    }
    if (kind == 1) {
      return cut(good);
    }
    if (kind == 2) {
      return flipped(good);
    }
    if (kind == 3) {
      return deep();
    }
    JsonNode tree = MAPPER.readTree(good);
    int places = random.nextInt(1, 4);
    for (int i = 0; i < places; i++) {
      tree = bent(tree);
    }
    return MAPPER.writeValueAsString(tree).getBytes(StandardCharsets.UTF_8);
  }

  private byte[] noise() {
    byte[] bytes = new byte[random.nextInt(200)];
    for (int i = 0; i < bytes.length; i++) {
      bytes[i] = (byte) random.nextInt(256);
    }
    return bytes;
  }

  private byte[] cut(String good) {
    return good.substring(0, random.nextInt(good.length())).getBytes(StandardCharsets.UTF_8);
  }

  private byte[] flipped(String good) {
    byte[] bytes = good.getBytes(StandardCharsets.UTF_8);
    for (int i = 0; i < 3; i++) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return bytes;
  }

  private byte[] deep() {
    int depth = random.nextInt(10, 20_000);
    return ("[".repeat(depth) + "]".repeat(depth)).getBytes(StandardCharsets.UTF_8);
  }

  /** The tree with one node changed, taken out, doubled or moved. */
  private JsonNode bent(JsonNode tree) throws JsonProcessingException {
    List<JsonNode> containers = new ArrayList<>();
    collect(tree, containers);
    if (containers.isEmpty()) {
      return value();
    }
    JsonNode container = containers.get(random.nextInt(containers.size()));
    if (container instanceof ObjectNode object) {
      List<String> names = new ArrayList<>();
      object.fieldNames().forEachRemaining(names::add);
      String name = names.isEmpty() ? "new" : names.get(random.nextInt(names.size()));
      bend(object, name);
    } else if (container instanceof ArrayNode array) {
      bend(array);
    }
    return tree;
  }

  private void bend(ObjectNode object, String name) throws JsonProcessingException {
    switch (random.nextInt(6)) {
      case 0 -> object.remove(name);
      case 1 -> object.set(name + "x", value());
      case 2 -> object.put(name, "x".repeat(random.nextInt(1, 120_000)));
      case 3 -> object.put(name, random.nextLong());
      default -> object.set(name, value());
    }
  }

  private void bend(ArrayNode array) throws JsonProcessingException {
    if (array.isEmpty() || random.nextBoolean()) {
      array.add(value());
    } else if (random.nextBoolean()) {
      array.remove(random.nextInt(array.size()));
    } else {
      array.add(array.get(random.nextInt(array.size())).deepCopy());
    }
  }

  private JsonNode value() throws JsonProcessingException {
    String json = VALUES.get(random.nextInt(VALUES.size()));
    return json.contains("e400") || json.contains("E-20000")
        ? MAPPER.getNodeFactory().numberNode(new java.math.BigDecimal(json))
        : MAPPER.readTree(json);
  }

  private static void collect(JsonNode node, List<JsonNode> containers) {
    if (node.isContainerNode()) {
      containers.add(node);
      node.forEach(child -> collect(child, containers));
    }
  }
}
