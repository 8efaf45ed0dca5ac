package org.potlife.plan;

import com.fasterxml.jackson.annotation.JsonProperty;

/** Where a plan stands. */
public enum PlanState {
  /** Asked for; waits for its turn or is being searched. */
  @JsonProperty("solving")
  SOLVING("solving"),
  /** Made and audited, not in force. */
  @JsonProperty("draft")
  DRAFT("draft"),
  /** In force; one per plant. */
  @JsonProperty("published")
  PUBLISHED("published"),
  /** Was in force until another was published. */
  @JsonProperty("superseded")
  SUPERSEDED("superseded"),
  /** No plan came out; the cause is kept. */
  @JsonProperty("failed")
  FAILED("failed");

  private final String word;

  PlanState(String word) {
    this.word = word;
  }

  /** The word used in the API, the database and on the sheets. */
  public String word() {
    return word;
  }

  /** The state with this word. */
  public static PlanState ofWord(String word) {
    for (PlanState state : values()) {
      if (state.word.equals(word)) {
        return state;
      }
    }
    throw new IllegalArgumentException("no state of a plan is called " + word);
  }
}
