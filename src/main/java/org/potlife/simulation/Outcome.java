package org.potlife.simulation;

/**
 * What one simulation of the shop came to.
 *
 * @param unplaced runs without a place
 * @param weightedLateMinutes late minutes of the orders times their weights
 * @param costMilli all costs, 1/1000 of the plant currency
 */
public record Outcome(int unplaced, long weightedLateMinutes, long costMilli)
    implements Comparable<Outcome> {

  /** The better outcome is the smaller one. */
  @Override
  public int compareTo(Outcome other) {
    int byPlace = Integer.compare(unplaced, other.unplaced);
    if (byPlace != 0) {
      return byPlace;
    }
    int byLateness = Long.compare(weightedLateMinutes, other.weightedLateMinutes);
    return byLateness != 0 ? byLateness : Long.compare(costMilli, other.costMilli);
  }
}
