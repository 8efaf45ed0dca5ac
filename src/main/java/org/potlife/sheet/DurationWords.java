package org.potlife.sheet;

/** Lengths of time as people say them. */
public final class DurationWords {

  private DurationWords() {}

  /**
   * Hours and minutes, from an hour on.
   *
   * @param minutes at least 0
   */
  public static String of(long minutes) {
    String rest = minutes % 60 == 0 ? "" : " " + minutes % 60 + " min";
    return minutes < 60 ? minutes + " min" : minutes / 60 + " h" + rest;
  }
}
