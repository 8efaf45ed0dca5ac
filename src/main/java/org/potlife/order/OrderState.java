package org.potlife.order;

import com.fasterxml.jackson.annotation.JsonProperty;

/** Where an order stands. */
public enum OrderState {
  @JsonProperty("open")
  OPEN("open"),
  /** Printing has begun; it can no longer be cancelled. */
  @JsonProperty("started")
  STARTED("started"),
  @JsonProperty("finished")
  FINISHED("finished"),
  @JsonProperty("cancelled")
  CANCELLED("cancelled");

  private final String word;

  OrderState(String word) {
    this.word = word;
  }

  /** The word used in the API and the database. */
  public String word() {
    return word;
  }
}
