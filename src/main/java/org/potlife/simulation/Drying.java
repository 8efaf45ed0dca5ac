package org.potlife.simulation;

import java.util.Arrays;

/**
 * Drying of one cabinet over the horizon: the drive (vapour pressure deficit times airflow) is
 * constant over steps, progress is its integral (R5).
 */
public final class Drying {

  private final int[] from;
  private final double[] drivePa;

  /**
   * @param from starts of the steps, seconds, ascending, the first one not after any moment asked
   *     about
   * @param drivePa drive within each step, Pa, at least 0
   */
  public Drying(int[] from, double[] drivePa) {
    this.from = from.clone();
    this.drivePa = drivePa.clone();
  }

  /**
   * When what goes in wet at {@code t} is dry, seconds; {@link StaffedTime#NEVER} if not within the
   * horizon.
   *
   * @param requiredPaS drying required, Pa s
   */
  public int dryAt(int t, double requiredPaS) {
    int i = step(t);
    double left = requiredPaS;
    int at = t;
    while (true) {
      boolean last = i == from.length - 1;
      double within = last ? Double.POSITIVE_INFINITY : drivePa[i] * (from[i + 1] - at);
      if (last && drivePa[i] <= 0) {
        return StaffedTime.NEVER;
      }
      if (within >= left) {
        double needed = Math.ceil(left / drivePa[i]);
        return needed >= StaffedTime.NEVER - at ? StaffedTime.NEVER : at + (int) needed;
      }
      left -= within;
      i++;
      at = from[i];
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Drying drying
        && Arrays.equals(from, drying.from)
        && Arrays.equals(drivePa, drying.drivePa);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(from) + Arrays.hashCode(drivePa);
  }

  private int step(int t) {
    int low = 0;
    int high = from.length - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (from[middle] <= t) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }
}
