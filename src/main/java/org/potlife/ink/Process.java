package org.potlife.ink;

import com.fasterxml.jackson.annotation.JsonProperty;

/** How an ink colours the cloth. */
public enum Process {
  /** Pigment in a water base, cured by heat; no agent, so no pot life. */
  @JsonProperty("water-based")
  WATER_BASED("water-based"),
  /** A reducing agent takes the dye out of the cloth while the pigment stays; has a pot life. */
  @JsonProperty("discharge")
  DISCHARGE("discharge");

  private final String word;

  Process(String word) {
    this.word = word;
  }

  /** The word used in the API and on the lists. */
  @Override
  public String toString() {
    return word;
  }
}
