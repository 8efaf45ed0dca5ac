package org.potlife.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Lines over time as SVG: seconds on a logarithmic axis, cost against a reference of 1. */
final class Plot {

  private static final int WIDTH = 720;
  private static final int HEIGHT = 420;
  private static final int LEFT = 60;
  private static final int BOTTOM = 50;
  private static final double NAME_HEIGHT = 13;
  private static final int TOP = 40;
  private static final int RIGHT = 150;
  private static final String[] COLOURS = {"#1b6ca8", "#b5482f", "#3f7d3f", "#7a4f9a", "#555555"};
  private static final String[] DASHES = {"", "6 3", "2 3", "8 3 2 3", "1 2"};

  /** A line: its name, and its points as seconds and value. */
  private record Line(String name, List<double[]> points) {}

  private final String title;
  private final String axis;
  private final List<Line> lines = new ArrayList<>();

  /** Heights at which names of lines stand. */
  private final List<Double> names = new ArrayList<>();

  Plot(String title, String axis) {
    this.title = title;
    this.axis = axis;
  }

  void line(String name, List<double[]> points) {
    lines.add(new Line(name, List.copyOf(points)));
  }

  String svg() {
    names.clear();
    double from = Double.MAX_VALUE;
    double to = 0;
    double most = 0;
    for (Line line : lines) {
      for (double[] point : line.points()) {
        from = Math.min(from, Math.max(0.01, point[0]));
        to = Math.max(to, point[0]);
        most = Math.max(most, point[1]);
      }
    }
    to = Math.max(to, from * 10);
    most = most <= 0 ? 1 : most;
    StringBuilder svg = new StringBuilder();
    svg.append(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" font-family=\"sans-serif\" font-size=\"12\">%n"
            .formatted(WIDTH, HEIGHT));
    svg.append("<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n");
    text(svg, LEFT, 20, "start", title);
    axes(svg, from, to, most);
    for (int i = 0; i < lines.size(); i++) {
      draw(svg, lines.get(i), i, from, to, most);
    }
    return svg.append("</svg>\n").toString();
  }

  private void axes(StringBuilder svg, double from, double to, double most) {
    for (double decade = 0.01; decade <= to * 1.001; decade *= 10) {
      if (decade >= from * 0.999) {
        double x = x(decade, from, to);
        rule(svg, x, TOP, x, HEIGHT - BOTTOM);
        text(svg, x, HEIGHT - BOTTOM + 16, "middle", "%ss".formatted(plain(decade)));
      }
    }
    for (int i = 0; i <= 5; i++) {
      double y = y(most * i / 5, most);
      rule(svg, LEFT, y, WIDTH - RIGHT, y);
      text(svg, LEFT - 6, y + 4, "end", plain(most * i / 5));
    }
    text(svg, LEFT, HEIGHT - 12, "start", axis);
  }

  private void draw(StringBuilder svg, Line line, int number, double from, double to, double most) {
    String colour = COLOURS[number % COLOURS.length];
    StringBuilder path = new StringBuilder();
    double lastY = 0;
    for (double[] point : line.points()) {
      double x = x(Math.max(from, point[0]), from, to);
      double y = y(point[1], most);
      path.append(path.isEmpty() ? "M" : "H").append(round(x));
      path.append(
          path.length() > 0 && path.charAt(0) == 'M' && !path.toString().contains("H")
              ? " " + round(y)
              : "V" + round(y));
      lastY = y;
    }
    path.append("H").append(WIDTH - RIGHT);
    svg.append(
        "<path d=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"2\" stroke-dasharray=\"%s\"/>%n"
            .formatted(path, colour, DASHES[number % DASHES.length]));
    text(svg, WIDTH - RIGHT + 6, freeBelow(lastY + 4), "start", line.name());
  }

  /** The first height from here down at which no other line's name stands. */
  private double freeBelow(double y) {
    double free = y;
    for (double taken : names.stream().sorted().toList()) {
      free = Math.abs(taken - free) < NAME_HEIGHT ? taken + NAME_HEIGHT : free;
    }
    names.add(free);
    return free;
  }

  private static double x(double seconds, double from, double to) {
    return LEFT + (WIDTH - LEFT - RIGHT) * Math.log(seconds / from) / Math.log(to / from);
  }

  private static double y(double value, double most) {
    return HEIGHT - BOTTOM - (HEIGHT - BOTTOM - TOP) * value / most;
  }

  private static void rule(StringBuilder svg, double x1, double y1, double x2, double y2) {
    svg.append(
        "<path d=\"M%s %sL%s %s\" stroke=\"#dddddd\"/>%n"
            .formatted(round(x1), round(y1), round(x2), round(y2)));
  }

  private static void text(StringBuilder svg, double x, double y, String anchor, String words) {
    svg.append(
        "<text x=\"%s\" y=\"%s\" text-anchor=\"%s\">%s</text>%n"
            .formatted(
                round(x), round(y), anchor, words.replace("&", "&amp;").replace("<", "&lt;")));
  }

  private static String plain(double value) {
    return value >= 10
        ? String.format(Locale.ROOT, "%.0f", value)
        : String.valueOf(Math.round(value * 100) / 100.0).replaceAll("\\.0$", "");
  }

  private static String round(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
