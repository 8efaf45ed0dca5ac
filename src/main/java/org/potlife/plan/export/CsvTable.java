package org.potlife.plan.export;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Rows of one CSV file. Written to memory: a list of a day is small. */
final class CsvTable {

  /**
   * What makes a spreadsheet read a cell as a formula; the wide forms are read as the narrow ones.
   */
  private static final String FORMULA_STARTS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

  private final StringBuilder text = new StringBuilder();
  private final CSVPrinter printer;
  private final int columns;

  CsvTable(String... header) {
    try {
      printer = new CSVPrinter(text, CSVFormat.RFC4180);
      printer.printRecord(Arrays.asList(header));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    columns = header.length;
  }

  /** Adds a row with as many cells as the header; null is an empty cell. */
  void row(Object... cells) {
    if (cells.length != columns) {
      throw new IllegalArgumentException(cells.length + " cells under " + columns + " columns");
    }
    try {
      printer.printRecord(Arrays.stream(cells).map(CsvTable::cell).toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The whole file. */
  String text() {
    return text.toString();
  }

  private static String cell(Object value) {
    if (value == null) {
      return "";
    }
    if (value instanceof OffsetDateTime time) {
      return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time);
    }
    if (value instanceof Number || value instanceof Boolean) {
      return value.toString();
    }
    if (value instanceof List<?> list) {
      return neutral(list.stream().map(String::valueOf).collect(Collectors.joining("; ")));
    }
    return neutral(value.toString());
  }

  /** An apostrophe before what a spreadsheet would calculate, leading blanks looked through. */
  private static String neutral(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (FORMULA_STARTS.indexOf(c) >= 0) {
        return "'" + text;
      }
      if (c != ' ') {
        return text;
      }
    }
    return text;
  }
}
