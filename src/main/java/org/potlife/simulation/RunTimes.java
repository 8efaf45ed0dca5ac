package org.potlife.simulation;

/** When the runs of a plan that was simulated begin and end. */
public interface RunTimes {

  /** When the set-up of a run begins, s; roughly right for a run without a place. */
  int startOf(int run);

  /** When a run is printed, s; roughly right for a run without a place. */
  int endOf(int run);

  /** Whether runs of a press may have come to other times since this was last asked. */
  default boolean changedSinceAsked(int press) {
    return true;
  }
}
