package org.potlife.plan;

import com.fasterxml.jackson.annotation.JsonProperty;

/** Who asked for a plan. */
public enum PlanOrigin {
  /** A person, or another system over the API. */
  @JsonProperty("planner")
  PLANNER("planner"),
  /** The service itself, since something happened. */
  @JsonProperty("events")
  EVENTS("events"),
  /** A person who brought an earlier plan back. */
  @JsonProperty("restoration")
  RESTORATION("restoration");

  private final String word;

  PlanOrigin(String word) {
    this.word = word;
  }

  /** The word used in the API and the database. */
  public String word() {
    return word;
  }

  /** The origin with this word. */
  public static PlanOrigin ofWord(String word) {
    for (PlanOrigin origin : values()) {
      if (origin.word.equals(word)) {
        return origin;
      }
    }
    throw new IllegalArgumentException("no origin of a plan is called " + word);
  }
}
