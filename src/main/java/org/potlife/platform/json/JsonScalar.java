package org.potlife.platform.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.potlife.platform.problem.Years;

/** Whether a value can become a number, a text, a time or a word of a list. */
final class JsonScalar {

  private JsonScalar() {}

  /** What is wrong with the value, or null when it fits. */
  static String fault(JsonNode node, Class<?> wanted) {
    if (wanted == Integer.class || wanted == int.class) {
      return whole(node, Integer.MIN_VALUE, Integer.MAX_VALUE);
    }
    if (wanted == Long.class || wanted == long.class) {
      return whole(node, Long.MIN_VALUE, Long.MAX_VALUE);
    }
    if (wanted == Double.class || wanted == double.class) {
      return number(node);
    }
    if (wanted == Boolean.class || wanted == boolean.class) {
      return node.isBoolean() ? null : "must be true or false, was " + describe(node);
    }
    if (!node.isTextual()) {
      return "must be a text in quotes, was " + describe(node);
    }
    String unstorable = JsonText.fault(node.textValue());
    return unstorable != null ? unstorable : word(node, wanted);
  }

  private static String whole(JsonNode node, long least, long most) {
    if (!node.isIntegralNumber()) {
      return "must be a whole number, was " + describe(node) + hint(node);
    }
    boolean inside =
        node.canConvertToLong() && node.longValue() >= least && node.longValue() <= most;
    return inside ? null : "must lie between " + least + " and " + most + ", was " + describe(node);
  }

  private static String number(JsonNode node) {
    if (!node.isNumber()) {
      return "must be a number, was " + describe(node) + hint(node);
    }
    if (!Double.isFinite(node.doubleValue())) {
      return "is too large, was " + describe(node);
    }
    // the database keeps what is sent, and it has its own limits
    boolean lost = node.doubleValue() == 0 && node.decimalValue().signum() != 0;
    return lost ? "is too close to 0, was " + describe(node) : null;
  }

  private static String hint(JsonNode node) {
    return node.isTextual() ? "; write it without quotes" : "";
  }

  private static String word(JsonNode node, Class<?> wanted) {
    String text = node.textValue();
    if (wanted == String.class) {
      return null;
    }
    if (wanted.isEnum()) {
      return words(wanted).contains("|" + text + "|")
          ? null
          : "must be one of " + readable(words(wanted)) + ", was " + describe(node);
    }
    return time(text, wanted);
  }

  private static String time(String text, Class<?> wanted) {
    try {
      if (wanted == OffsetDateTime.class) {
        return year(OffsetDateTime.parse(text).getYear());
      } else if (wanted == LocalDate.class) {
        return year(LocalDate.parse(text).getYear());
      } else if (wanted == LocalTime.class) {
        LocalTime.parse(text);
      } else if (wanted == ZoneId.class) {
        return ZoneId.getAvailableZoneIds().contains(text)
            ? null
            : "must be a time zone of the tz database like Europe/Berlin, was " + quoted(text);
      }
      return null;
    } catch (DateTimeException e) {
      return "must be " + example(wanted) + ", was " + quoted(text);
    }
  }

  private static String year(int year) {
    return Years.holds(year)
        ? null
        : "must lie in the years " + Years.FIRST + " to " + Years.LAST + ", was in " + year;
  }

  private static String example(Class<?> wanted) {
    if (wanted == OffsetDateTime.class) {
      return "a date and time with an offset like 2026-12-01T06:00:00+01:00";
    }
    return wanted == LocalDate.class ? "a date like 2026-12-01" : "a time of day like 06:30";
  }

  /** The words of a list between bars, as the API spells them. */
  private static String words(Class<?> list) {
    return Arrays.stream(list.getEnumConstants())
        .map(constant -> spelling(list, ((Enum<?>) constant).name()))
        .collect(Collectors.joining("|", "|", "|"));
  }

  private static String spelling(Class<?> list, String name) {
    try {
      JsonProperty own = list.getField(name).getAnnotation(JsonProperty.class);
      return own == null ? name : own.value();
    } catch (NoSuchFieldException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String readable(String words) {
    return words.substring(1, words.length() - 1).replace("|", ", ");
  }

  /** The value as it may be shown in a message. */
  static String describe(JsonNode node) {
    return switch (node.getNodeType()) {
      case OBJECT -> "an object";
      case ARRAY -> "an array";
      case STRING -> quoted(node.textValue());
      default -> JsonText.echo(node.asText());
    };
  }

  private static String quoted(String text) {
    return "\"" + JsonText.echo(text) + "\"";
  }
}
