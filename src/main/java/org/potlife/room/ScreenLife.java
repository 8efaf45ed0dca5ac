package org.potlife.room;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Locale;

/** What a screen is at the moment, in the order of its life. */
public enum ScreenLife {
  /** An empty mesh in its frame, before degreasing or while it is degreased. */
  RECLAIMED,
  /** Wet after degreasing, or dry and not coated yet. */
  DEGREASED_DRYING,
  /** Coated and not dry yet. */
  COATED_DRYING,
  /** The coat is dry: it may be exposed. */
  DRY,
  /** Exposed and not washed out yet. */
  EXPOSED,
  /** Washed out; until it is post-exposed and taped. */
  WASHED_OUT_DRYING,
  /** Taped and checked. */
  READY,
  /** On a press, its set-up and tear-down included. */
  ON_PRESS,
  /** Done with, to be reclaimed. */
  TO_RECLAIM,
  /** Cannot be printed with any more. */
  BROKEN;

  /** The word in the API, for example coated-drying. */
  @JsonValue
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * The state of a word.
   *
   * @throws IllegalArgumentException if there is no such state
   */
  public static ScreenLife of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
