package org.potlife.screen;

import java.util.List;

/**
 * How much faster than still air a cabinet dries, learned from looks at its screens (R5).
 *
 * <p>A screen that is dry after the deficit has added up to D Pa h shows that the airflow factor is
 * at least required / D, one that is still wet that it is less. Each load gives one interval. The
 * factor moves by {@value #SMOOTHING} of the way to the nearest point of the interval; within the
 * interval it stays. The weight is that of the learned grams per piece, common practice without a
 * source. The reserve is left out on both sides: it stays what it is for.
 *
 * @param setUpFactor the factor in the plant's set-up, greater than 0
 * @param smoothedFactor what the loads have made of it
 * @param observations loads that told something
 */
public record Calibration(double setUpFactor, double smoothedFactor, int observations) {

  /** Share of its error by which a load moves the factor. */
  public static final double SMOOTHING = 0.3;

  /** Fewer loads are left to chance: the set-up's factor serves. */
  public static final int LEAST_OBSERVATIONS = 3;

  /** What the set-up takes for a factor. */
  private static final double LEAST_FACTOR = 0.05;

  private static final double MOST_FACTOR = 20;

  public Calibration {
    if (!(setUpFactor > 0) || !(smoothedFactor > 0)) {
      throw new IllegalArgumentException(
          "the factors are " + setUpFactor + " and " + smoothedFactor + ", must be greater than 0");
    }
  }

  /**
   * What the looks at one load tell.
   *
   * @param leastFactor it is not less; 0 when nobody found it dry
   * @param mostFactor it is less; infinite when nobody found it wet
   */
  public record Observation(double leastFactor, double mostFactor) {

    public Observation {
      if (!(leastFactor >= 0) || !(mostFactor > leastFactor)) {
        throw new IllegalArgumentException(
            "the factor is " + leastFactor + " to " + mostFactor + ", must be a range from 0");
      }
    }
  }

  /** One look at a load: how much deficit had added up since its door was shut, Pa h. */
  public record Look(double requiredPaH, double deficitPaH, boolean dry) {

    public Look {
      if (!(requiredPaH > 0) || !(deficitPaH >= 0)) {
        throw new IllegalArgumentException(
            "%s of %s Pa h: must be at least 0 of more than 0".formatted(deficitPaH, requiredPaH));
      }
    }

    private double bound() {
      return requiredPaH / deficitPaH;
    }
  }

  /**
   * The looks at one load taken together, in the order of time. A later look that contradicts an
   * earlier one replaces it. Null when they tell nothing: in air that did not dry at all a dry
   * screen fits no factor and a wet one every factor.
   */
  public static Observation observe(List<Look> looks) {
    double least = 0;
    double most = Double.POSITIVE_INFINITY;
    for (Look look : looks) {
      if (look.deficitPaH() == 0) {
        continue;
      }
      if (look.dry()) {
        least = Math.max(least, look.bound());
        most = most > least ? most : Double.POSITIVE_INFINITY;
      } else {
        most = Math.min(most, look.bound());
        least = least < most ? least : 0;
      }
    }
    return least == 0 && most == Double.POSITIVE_INFINITY ? null : new Observation(least, most);
  }

  /**
   * The set-up's factor moved by what each load told, in the order of time.
   *
   * @param setUpFactor greater than 0
   */
  public static Calibration of(double setUpFactor, List<Observation> observations) {
    double factor = setUpFactor;
    for (Observation seen : observations) {
      double nearest = Math.min(Math.max(factor, seen.leastFactor()), seen.mostFactor());
      factor += SMOOTHING * (nearest - factor);
    }
    return new Calibration(setUpFactor, factor, observations.size());
  }

  /** The factor to plan with, within what a set-up takes. */
  public double factorInUse() {
    return observations < LEAST_OBSERVATIONS
        ? setUpFactor
        : Math.min(MOST_FACTOR, Math.max(LEAST_FACTOR, smoothedFactor));
  }
}
