package org.potlife.order;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.potlife.platform.problem.FieldError;

/**
 * Orders written as a table (RFC 4180, the first row names the columns): one row per print; rows
 * with the same reference are one order, whose further columns count from its first row. The table
 * only becomes the order documents; whether these can be taken says {@link OrderCheck}.
 */
public final class OrderTable {

  /** Most rows that are read at once. */
  public static final int MOST_ROWS = 5000;

  /** Columns of the order itself. */
  private static final List<String> ORDER =
      List.of("reference", "customer", "priority", "dueAt", "printsInListedOrder");

  private static final List<String> GARMENTS =
      List.of(
          "style",
          "kind",
          "colour",
          "lightness",
          "cottonPercent",
          "dye",
          "quantity",
          "blanks",
          "availableFrom",
          "lengthMm",
          "widthMm",
          "massG");

  /** Columns of the print; the image's measures have names of their own beside the garment's. */
  private static final Map<String, String> PRINT = new LinkedHashMap<>();

  private static final Set<String> TIMES = Set.of("dueAt", "availableFrom");
  private static final Set<String> TEXTS =
      Set.of(
          "reference",
          "customer",
          "style",
          "kind",
          "colour",
          "dye",
          "design",
          "position",
          "process",
          "trialPrint");
  private static final Set<String> FLAGS = Set.of("printsInListedOrder", "artworkApproved");

  static {
    for (String own :
        List.of("design", "position", "process", "artworkApproved", "trialPrint", "passes")) {
      PRINT.put(own, own);
    }
    PRINT.put("imageWidthMm", "widthMm");
    PRINT.put("imageHeightMm", "heightMm");
    PRINT.put("flashes", "flashes");
  }

  private static final String COLOURS = "colours";
  private static final DateTimeFormatter WALL =
      DateTimeFormatter.ofPattern("yyyy-MM-dd['T'][' ']HH:mm[:ss]");

  private final ZoneId zone;
  private final List<ObjectNode> orders = new ArrayList<>();
  private final List<Wrong> wrong = new ArrayList<>();
  private final Map<String, Integer> indexOf = new HashMap<>();

  /** Row of each order, and of each of its prints. */
  private final List<List<Integer>> rows = new ArrayList<>();

  /**
   * What is wrong in a row.
   *
   * @param row number of the row, the one with the names is 1
   * @param column its name; empty for the whole row
   */
  public record Wrong(int row, String column, String detail) {

    /** Whether the other one is about the same cell. */
    public boolean isAt(Wrong other) {
      return row == other.row && column.equals(other.column);
    }
  }

  private OrderTable(ZoneId zone) {
    this.zone = zone;
  }

  /**
   * Reads a table.
   *
   * @param zone zone of times without an offset
   */
  public static OrderTable read(String csv, ZoneId zone) {
    OrderTable table = new OrderTable(zone);
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setIgnoreEmptyLines(true)
            .setTrim(true)
            .setDelimiter(delimiter(csv))
            .get();
    try (CSVParser parser = CSVParser.parse(new StringReader(bare(csv)), format)) {
      table.names(parser.getHeaderNames());
      int row = 1;
      for (CSVRecord record : parser) {
        row++;
        if (row > MOST_ROWS + 1) {
          table.wrong.add(new Wrong(row, "", "at most " + MOST_ROWS + " rows at once"));
          break;
        }
        table.row(row, record);
      }
    } catch (IOException | UncheckedIOException | IllegalArgumentException e) {
      table.wrong.add(new Wrong(1, "", "is no table: " + e.getMessage()));
    }
    return table;
  }

  /** A spreadsheet in a country with decimal commas separates by semicolons. */
  private static String delimiter(String csv) {
    String head = csv.lines().findFirst().orElse("");
    return head.contains(";") && !head.contains(",") ? ";" : ",";
  }

  private static String bare(String csv) {
    return csv.startsWith("\uFEFF") ? csv.substring(1) : csv;
  }

  /** The columns, as a planner may begin a table with. */
  public static List<String> columns() {
    List<String> all = new ArrayList<>(ORDER);
    all.addAll(GARMENTS);
    all.addAll(PRINT.keySet());
    all.add(COLOURS);
    return all;
  }

  /** The orders, as documents that were not checked yet. */
  public ArrayNode orders() {
    ArrayNode all = JsonNodeFactory.instance.arrayNode();
    orders.forEach(all::add);
    return all;
  }

  /** What is wrong with the table itself. */
  public List<Wrong> wrong() {
    return List.copyOf(wrong);
  }

  /** The place in the table of an error in the documents. */
  public Wrong locate(FieldError error) {
    String[] steps = error.pointer().split("/");
    int order = steps.length > 1 && steps[1].matches("\\d+") ? Integer.parseInt(steps[1]) : -1;
    if (order < 0 || order >= rows.size()) {
      return new Wrong(1, "", error.detail());
    }
    List<Integer> own = rows.get(order);
    boolean print = steps.length > 3 && steps[2].equals("prints") && steps[3].matches("\\d+");
    int row = print ? own.get(Math.min(Integer.parseInt(steps[3]), own.size() - 1)) : own.get(0);
    return new Wrong(row, print ? printColumn(steps) : orderColumn(steps), error.detail());
  }

  private static String orderColumn(String[] steps) {
    return steps.length > 3 && steps[2].equals("garments")
        ? steps[3]
        : steps.length > 2 ? steps[2] : "";
  }

  private static String printColumn(String[] steps) {
    if (steps.length < 5) {
      return "";
    }
    return PRINT.entrySet().stream()
        .filter(column -> column.getValue().equals(steps[4]))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(steps[4]);
  }

  private void names(List<String> names) {
    Set<String> unknown = new HashSet<>(names);
    columns().forEach(unknown::remove);
    unknown.stream()
        .sorted()
        .forEach(
            name ->
                wrong.add(
                    new Wrong(1, name, "is no column; there are " + String.join(", ", columns()))));
    if (!names.contains("reference")) {
      wrong.add(new Wrong(1, "reference", "must be among the columns"));
    }
  }

  private void row(int row, CSVRecord record) {
    if (record.size() > record.getParser().getHeaderNames().size()) {
      wrong.add(new Wrong(row, "", "has more cells than there are columns"));
    }
    String reference = cell(record, "reference");
    if (reference.isEmpty()) {
      wrong.add(new Wrong(row, "reference", "must be given in every row"));
      return;
    }
    Integer known = indexOf.get(reference);
    if (known == null) {
      known = orders.size();
      indexOf.put(reference, known);
      orders.add(order(row, record));
      rows.add(new ArrayList<>());
    }
    rows.get(known).add(row);
    orders.get(known).withArray("prints").add(print(row, record));
  }

  private ObjectNode order(int row, CSVRecord record) {
    ObjectNode order = JsonNodeFactory.instance.objectNode();
    ORDER.forEach(column -> put(order, column, column, row, record));
    ObjectNode garments = order.putObject("garments");
    GARMENTS.forEach(column -> put(garments, column, column, row, record));
    order.putArray("prints");
    return order;
  }

  private ObjectNode print(int row, CSVRecord record) {
    ObjectNode print = JsonNodeFactory.instance.objectNode();
    PRINT.forEach((column, field) -> put(print, field, column, row, record));
    ArrayNode colours = print.putArray(COLOURS);
    for (String part : cell(record, COLOURS).split("\\|")) {
      if (!part.isBlank()) {
        colour(part.strip(), row).ifPresent(colours::add);
      }
    }
    return print;
  }

  /** A colour is written ink:coverage:mesh-thread, for example brick:22:43-80. */
  private java.util.Optional<ObjectNode> colour(String text, int row) {
    String[] parts = text.split(":");
    String[] mesh = parts.length == 3 ? parts[2].split("-") : new String[0];
    if (mesh.length != 2 || !number(parts[1]) || !number(mesh[0]) || !number(mesh[1])) {
      wrong.add(
          new Wrong(
              row, COLOURS, "must be ink:coverage:mesh-thread like brick:22:43-80, was " + text));
      return java.util.Optional.empty();
    }
    ObjectNode colour = JsonNodeFactory.instance.objectNode();
    colour.put("ink", parts[0].strip());
    colour.put("coveragePercent", decimal(parts[1]));
    colour.put("meshPerCm", decimal(mesh[0]));
    colour.put("threadUm", decimal(mesh[1]));
    return java.util.Optional.of(colour);
  }

  private void put(ObjectNode node, String field, String column, int row, CSVRecord record) {
    String text = cell(record, column);
    if (text.isEmpty()) {
      return;
    }
    if (TEXTS.contains(column)) {
      node.put(field, text);
    } else if (TIMES.contains(column)) {
      node.put(field, time(text, column, row));
    } else if (FLAGS.contains(column)) {
      node.put(
          field, List.of("true", "yes", "1").contains(text.toLowerCase(java.util.Locale.ROOT)));
    } else if (number(text)) {
      node.set(field, whole(decimal(text)));
    } else {
      wrong.add(new Wrong(row, column, "must be a number, was " + text));
    }
  }

  private static JsonNode whole(BigDecimal value) {
    return value.stripTrailingZeros().scale() <= 0
        ? JsonNodeFactory.instance.numberNode(value.toBigInteger())
        : JsonNodeFactory.instance.numberNode(value);
  }

  private String time(String text, String column, int row) {
    try {
      return OffsetDateTime.parse(text).toString();
    } catch (DateTimeException e) {
      try {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
            LocalDateTime.parse(text, WALL).atZone(zone));
      } catch (DateTimeException f) {
        wrong.add(new Wrong(row, column, "must be a time like 2026-12-03 14:00, was " + text));
        return text;
      }
    }
  }

  private static boolean number(String text) {
    return text.strip().matches("-?\\d{1,9}([.,]\\d{1,6})?");
  }

  private static BigDecimal decimal(String text) {
    return new BigDecimal(text.strip().replace(',', '.'));
  }

  private static String cell(CSVRecord record, String column) {
    return record.isMapped(column) && record.isSet(column) ? record.get(column).strip() : "";
  }
}
