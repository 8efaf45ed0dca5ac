package org.potlife.plan;

import java.time.Instant;

/**
 * A plan stands, is in force, or failed. Fired as a CDI event within the transaction of the change:
 * an observer that fails undoes it.
 *
 * @param at when it was stored
 */
public record PlanChange(String plant, String plan, int version, Kind kind, Instant at) {

  /** What happened. */
  public enum Kind {
    DRAFTED,
    PUBLISHED,
    FAILED
  }
}
