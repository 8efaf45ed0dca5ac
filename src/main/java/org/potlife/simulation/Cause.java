package org.potlife.simulation;

/** Why a run did not start when its press was free. */
public enum Cause {
  /** The press is not staffed, or what is left of its shift is too short. */
  CLOSED("closed"),
  /** The garments are not in house yet (R18). */
  GARMENTS("garments"),
  /** Another print on the same garments is not done and cool (R17). */
  SAME_GARMENTS("same-garments"),
  /** The screens are not ready (R4). */
  SCREENS("screens"),
  /** The screens are on another run (R4). */
  SAME_SCREENS("same-screens"),
  /** The ink cannot be ready earlier (R10, R12). */
  INK_ROOM("ink-room"),
  /** The dryer has no room (R14, R15, R16). */
  DRYER("dryer");

  private final String word;

  Cause(String word) {
    this.word = word;
  }

  /** The word in the API and on the lists. */
  @Override
  public String toString() {
    return word;
  }
}
