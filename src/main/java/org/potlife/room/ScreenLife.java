package org.potlife.room;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Locale;

/** What a screen is at the moment, in the order of its life. */
public enum ScreenLife {
  /** An empty mesh in its frame, before degreasing or while it is degreased. */
  @JsonProperty("reclaimed")
  RECLAIMED,
  /** Wet after degreasing, or dry and not coated yet. */
  @JsonProperty("degreased-drying")
  DEGREASED_DRYING,
  /** Coated and not dry yet. */
  @JsonProperty("coated-drying")
  COATED_DRYING,
  /** The coat is dry: it may be exposed. */
  @JsonProperty("dry")
  DRY,
  /** Exposed and not washed out yet. */
  @JsonProperty("exposed")
  EXPOSED,
  /** Washed out; until it is post-exposed and taped. */
  @JsonProperty("washed-out-drying")
  WASHED_OUT_DRYING,
  /** Taped and checked. */
  @JsonProperty("ready")
  READY,
  /** On a press, its set-up and tear-down included. */
  @JsonProperty("on-press")
  ON_PRESS,
  /** Done with, to be reclaimed. */
  @JsonProperty("to-reclaim")
  TO_RECLAIM,
  /** Cannot be printed with any more. */
  @JsonProperty("broken")
  BROKEN;

  /**
   * The state of a word.
   *
   * @throws IllegalArgumentException if there is no such state
   */
  public static ScreenLife of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
