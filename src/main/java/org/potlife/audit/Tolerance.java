package org.potlife.audit;

/**
 * Every tolerance of the audit, each once. Where both sides of a comparison stand on the sheet, the
 * comparison is exact; these are for values that the audit computes itself.
 */
final class Tolerance {

  /** Computed moments and durations: the sheet gives whole seconds. */
  static final long SECONDS = 1;

  /** Waits are written in rounded minutes: one minute for each line, and one for a missing line. */
  static final long WAIT_LINE_S = 60;

  /** A batch that could be activated less than this later counts as late as possible. */
  static final long LATE_ACTIVATION_S = 60;

  /** Ink drawn per use: each use is rounded to a whole gram. */
  static final double GRAMS_PER_USE = 1.0;

  /** Rates are written in whole pieces per hour. */
  static final double PIECES_PER_HOUR = 0.5;

  /** Pieces that rates add up to, besides the rounding of the rates themselves. */
  static final double PIECES = 1.0;

  /** Belt speeds may be written with three decimals, m/min. */
  static final double SPEED_M_PER_MIN = 0.0005;

  /** So much later than published is a load no news: the crew opens a door when it comes to it. */
  static final long NO_NEWS_SECONDS = 60;

  /** Percentages and seconds of dwell on the belt's timetable are rounded. */
  static final double BELT_LINE = 1.0;

  /** A recipe of three thirds is written as 99.99 %: its shares are of what it sums to. */
  static final double RECIPE_SUM_PERCENT = 0.01 + 1e-9;

  /** Binary fractions of decimal numbers, relative. */
  static final double ARITHMETIC = 1e-9;

  private Tolerance() {}
}
