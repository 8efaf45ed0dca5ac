package org.potlife.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Rows as they are measured; said as Markdown or CSV. */
final class Table {

  private final String title;
  private final List<String> head;
  private final List<List<String>> rows = new ArrayList<>();
  private String note = "";

  Table(String title, String... head) {
    this.title = title;
    this.head = List.of(head);
  }

  void add(Object... cells) {
    if (cells.length != head.size()) {
      throw new IllegalArgumentException(head.size() + " cells wanted, given " + cells.length);
    }
    rows.add(Arrays.stream(cells).map(Table::said).toList());
  }

  /** A sentence below the table. */
  void note(String sentence) {
    note = note + (note.isEmpty() ? "" : " ") + sentence;
  }

  private static String said(Object cell) {
    if (cell instanceof Double number) {
      double size = Math.abs(number);
      String format = size >= 1000 ? "%.0f" : size >= 10 ? "%.1f" : "%.3f";
      return number.isNaN() ? "–" : String.format(Locale.ROOT, format, number);
    }
    return String.valueOf(cell);
  }

  String markdown() {
    StringBuilder text = new StringBuilder("## " + title + "\n\n");
    text.append("| ").append(String.join(" | ", head)).append(" |\n");
    text.append("|---".repeat(head.size())).append("|\n");
    rows.forEach(row -> text.append("| ").append(String.join(" | ", row)).append(" |\n"));
    return text.append(note.isEmpty() ? "" : "\n" + note + "\n").append("\n").toString();
  }

  String csv() {
    StringBuilder text = new StringBuilder(line(head));
    rows.forEach(row -> text.append(line(row)));
    return text.toString();
  }

  private static String line(List<String> cells) {
    return String.join(
            ",", cells.stream().map(cell -> "\"" + cell.replace("\"", "\"\"") + "\"").toList())
        + "\r\n";
  }
}
