package org.potlife.event.internal;

import java.util.Optional;
import java.util.stream.Stream;

/** What became of an event of the log. */
enum LogState {
  /** It took effect. */
  APPLIED("applied", "e.parked is null"),
  /** It contradicts the shop's state and waits for a person. */
  PARKED("parked", "e.parked is not null and e.dismissed = false"),
  /** A person set it aside for good. */
  DISMISSED("dismissed", "e.dismissed = true");

  private final String word;
  private final String condition;

  LogState(String word, String condition) {
    this.word = word;
    this.condition = condition;
  }

  String word() {
    return word;
  }

  /** As a condition of a query on events {@code e}. */
  String condition() {
    return condition;
  }

  static Optional<LogState> find(String word) {
    return Stream.of(values()).filter(state -> state.word.equals(word)).findFirst();
  }
}
