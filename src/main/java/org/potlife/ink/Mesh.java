package org.potlife.ink;

/**
 * The mesh of a screen, plain weave, and the ink that it lays down.
 *
 * <p>Opening, open area and theoretical volume follow the definitions of ISO 9044 (from memory);
 * the wet deposit follows "How Much Ink Do You Need?", screenweb.com, April 2000, table 1. The
 * models of the deposit disagree with each other, so the ink's transfer factor and, better, the
 * plant's own weighing stand above it.
 *
 * @param threadsPerCm threads per cm, greater than 0
 * @param threadUm thread diameter, um, greater than 0 and less than the distance of the threads
 * @param fabricUm thickness of the fabric, um, greater than 0; null if nobody has measured it
 * @throws IllegalArgumentException if a value is out of range or the threads leave no opening
 */
public record Mesh(double threadsPerCm, double threadUm, Double fabricUm) {

  private static final double UM_PER_CM = 10_000;

  /**
   * Threads cross, so a fabric is nearly two threads thick, always less. Common practice, no
   * source; rather thick, so that no print runs short: "Mesh Matters", screenweb.com, June 2009,
   * has 63 um for threads of 40 um, which is 1.58.
   */
  private static final double FABRIC_PER_THREAD = 1.7;

  /** The table knows whole counts only: its first row ends here, the second begins one later. */
  private static final double LAST_COARSE = 42;

  private static final double LAST_MEDIUM = 139;

  public Mesh {
    if (!(threadsPerCm > 0) || Double.isInfinite(threadsPerCm)) {
      throw new IllegalArgumentException(
          "threadsPerCm is " + threadsPerCm + ", must be greater than 0");
    }
    if (!(threadUm > 0) || Double.isInfinite(threadUm)) {
      throw new IllegalArgumentException("threadUm is " + threadUm + ", must be greater than 0");
    }
    if (fabricUm != null && (!(fabricUm > 0) || fabricUm.isInfinite())) {
      throw new IllegalArgumentException(
          "fabricUm is " + fabricUm + ", must be greater than 0 or left out");
    }
    if (!(UM_PER_CM / threadsPerCm - threadUm > 0)) {
      throw new IllegalArgumentException(
          "a mesh of "
              + threadsPerCm
              + " threads per cm of "
              + threadUm
              + " um has no opening: threads must be thinner than "
              + UM_PER_CM / threadsPerCm
              + " um");
    }
  }

  /** Opening between two threads, um: {@code 10000 / n - d}. */
  public double openingUm() {
    return UM_PER_CM / threadsPerCm - threadUm;
  }

  /** Open share of the area, 0 to 1: {@code (w / (w + d))^2}. */
  public double openAreaShare() {
    double share = openingUm() / (openingUm() + threadUm);
    return share * share;
  }

  /** Thickness of the fabric, um: the given one, else 1.7 thread diameters. */
  public double fabricThicknessUm() {
    return fabricUm == null ? FABRIC_PER_THREAD * threadUm : fabricUm;
  }

  /** Ink that fills the openings of one square metre, cm3/m2: open area times thickness. */
  public double theoreticalVolumeCm3PerM2() {
    return openAreaShare() * fabricThicknessUm();
  }

  /**
   * Height of the wet ink film on the cloth, um, which is cm3/m2.
   *
   * <p>Up to 42 threads per cm {@code 1.82 d (1 - n d)^2}, where the fabric's thickness does not
   * enter; 43 to 139 {@code 0.285 F}; from 140 {@code 0.35 F}. Between 42 and 43 and between 139
   * and 140 the two rows are mixed in proportion, so that a measured count a little beside the
   * nominal one does not jump by a third.
   */
  public double wetDepositUm() {
    double medium = 0.285 * fabricThicknessUm();
    double fine = 0.35 * fabricThicknessUm();
    double coarse = 1.82 * threadUm * openAreaShare();
    double aboveCoarse = shareOfNextRow(LAST_COARSE);
    double aboveMedium = shareOfNextRow(LAST_MEDIUM);
    return aboveMedium > 0
        ? (1 - aboveMedium) * medium + aboveMedium * fine
        : (1 - aboveCoarse) * coarse + aboveCoarse * medium;
  }

  private double shareOfNextRow(double lastOfRow) {
    return Math.min(1, Math.max(0, threadsPerCm - lastOfRow));
  }
}
