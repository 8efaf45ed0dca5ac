package org.potlife.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.potlife.platform.json.JsonSettings;
import org.potlife.shop.Shop;

/** What the shop's form says of each parameter, held against the records of the set-up. */
class ParametersTest {

  private static final String PLACE = "/META-INF/resources/ui/office/parameters.json";
  private static final ObjectMapper MAPPER = JsonSettings.newMapper();

  /** Fields that decide over the defaults of others. */
  private static final Map<String, Object> GIVEN =
      Map.of("Press.ratePerHour", 100, "InkSystem.process", org.potlife.ink.Process.DISCHARGE);

  /** Ends of names that carry a unit, the longer ones first, and how the form writes it. */
  private static final Map<String, String> UNITS = units();

  private final List<String> wrong = new ArrayList<>();
  private ObjectNode form;

  private static Map<String, String> units() {
    Map<String, String> units = new LinkedHashMap<>();
    units.put("MPerMin", "m/min");
    units.put("GPerCm3", "g/cm³");
    units.put("PerCm", "per cm");
    units.put("PerKg", "per kg");
    units.put("Minutes", "min");
    units.put("MinutesPerScreen", "min");
    units.put("Seconds", "s");
    units.put("Hours", "h");
    units.put("Days", "days");
    units.put("Percent", "%");
    units.put("PaH", "Pa h");
    units.put("Kw", "kW");
    units.put("Mm", "mm");
    units.put("Um", "µm");
    units.put("temperatureC", "°C");
    units.put("TemperatureC", "°C");
    units.put("DryerS", "s");
    units.put("dwellS", "s");
    units.put("G", "g");
    return units;
  }

  @BeforeEach
  void readTheForm() throws IOException {
    try (InputStream in = ParametersTest.class.getResourceAsStream(PLACE)) {
      form = MAPPER.createObjectNode();
      for (JsonNode group : MAPPER.readTree(in).get("groups")) {
        if (group.has("name")) {
          form.withArray("fields").add(((ObjectNode) group.deepCopy()).put("type", "part"));
        } else {
          group.get("fields").forEach(form.withArray("fields")::add);
        }
      }
    }
  }

  @Test
  void everyFieldOfTheSetUpIsDescribedTrulyAndNothingElseIs() {
    compare("", Shop.class, form.get("fields"));

    assertThat(wrong).isEmpty();
  }

  @Test
  void aWrongDescriptionWouldBeSeen() {
    ObjectNode press = (ObjectNode) form.at("/fields/3/fields/9");
    assertThat(press.get("name").asText()).isEqualTo("changeoverMinutes");
    press.put("default", "11").put("source", " ").put("unit", "h");
    ((ObjectNode) form.at("/fields/3/fields/10")).put("name", "minutesPerFrame");

    compare("", Shop.class, form.get("fields"));

    assertThat(wrong)
        .containsExactlyInAnyOrder(
            "/presses/changeoverMinutes has the default 10, not 11",
            "/presses/changeoverMinutes has no source",
            "/presses/changeoverMinutes is in min, not in h",
            "/presses/minutesPerScreen is not described",
            "/presses/minutesPerFrame is no field of the set-up");
  }

  private void compare(String pointer, Class<?> type, JsonNode fields) {
    Map<String, JsonNode> described = new LinkedHashMap<>();
    fields.forEach(field -> described.put(field.get("name").asText(), field));
    Record bare = bare(type);
    for (RecordComponent field : type.getRecordComponents()) {
      String own = pointer + "/" + field.getName();
      JsonNode entry = described.remove(field.getName());
      if (entry == null) {
        wrong.add(own + " is not described");
      } else if (field.getType().isRecord()) {
        holdType(own, entry, "part");
        compare(own, field.getType(), entry.get("fields"));
      } else if (element(field.getGenericType()) instanceof Class<?> of && of.isRecord()) {
        holdType(own, entry, "list");
        compare(own, of, entry.get("fields"));
      } else {
        parameter(own, field, value(field, bare), entry);
      }
    }
    described
        .keySet()
        .forEach(name -> wrong.add(pointer + "/" + name + " is no field of the set-up"));
  }

  private void holdType(String pointer, JsonNode entry, String type) {
    if (!entry.path("type").asText().equals(type)) {
      wrong.add(pointer + " must be a " + type);
    }
  }

  private void parameter(String pointer, RecordComponent field, Object value, JsonNode entry) {
    if (entry.path("label").asText().isBlank()) {
      wrong.add(pointer + " has no label");
    }
    if (entry.path("source").asText().isBlank()) {
      wrong.add(pointer + " has no source");
    }
    String said = entry.path("default").asText();
    String held = GIVEN.containsKey(key(field)) ? "" : text(value);
    boolean right =
        held.isEmpty()
            // what is empty may be put into words, a figure would be made up
            ? said.chars().noneMatch(Character::isDigit)
            : said.equals(held) || said.startsWith(held + " ");
    if (!right) {
      wrong.add(pointer + " has the default " + held + ", not " + said);
    }
    UNITS.entrySet().stream()
        .filter(unit -> field.getName().endsWith(unit.getKey()))
        .findFirst()
        .map(Map.Entry::getValue)
        .filter(unit -> !entry.path("unit").asText().equals(unit))
        .ifPresent(
            unit ->
                wrong.add(pointer + " is in " + unit + ", not in " + entry.path("unit").asText()));
    if (field.getType().isEnum()) {
      List<String> choices = new ArrayList<>();
      entry.path("choices").forEach(choice -> choices.add(choice.asText()));
      List<String> words = Stream.of(field.getType().getEnumConstants()).map(this::text).toList();
      if (!choices.equals(words)) {
        wrong.add(pointer + " has the choices " + words + ", not " + choices);
      }
    }
  }

  private String text(Object value) {
    if (value == null) {
      return "";
    }
    if (value instanceof Boolean flag) {
      return flag ? "yes" : "no";
    }
    if (value instanceof List<?> list) {
      return list.stream().map(this::text).collect(Collectors.joining(", "));
    }
    JsonNode node = MAPPER.valueToTree(value);
    return node.isNumber()
        ? new BigDecimal(node.asText()).stripTrailingZeros().toPlainString()
        : node.asText();
  }

  private static String key(RecordComponent field) {
    return field.getDeclaringRecord().getSimpleName() + "." + field.getName();
  }

  private static Type element(Type type) {
    return type instanceof ParameterizedType list ? list.getActualTypeArguments()[0] : type;
  }

  private static Object value(RecordComponent field, Record of) {
    try {
      return field.getAccessor().invoke(of);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The record with nothing but its defaults. */
  private static Record bare(Class<?> type) {
    RecordComponent[] fields = type.getRecordComponents();
    try {
      Constructor<?> made =
          type.getDeclaredConstructor(
              Stream.of(fields).map(RecordComponent::getType).toArray(Class[]::new));
      return (Record)
          made.newInstance(Stream.of(fields).map(field -> GIVEN.get(key(field))).toArray());
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(type.getName(), e);
    }
  }
}
