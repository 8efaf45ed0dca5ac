package org.potlife.ink;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** What the ink room weighs for one batch (R9), in whole grams. */
public final class RecipeMass {

  /** Percentages are read to a millionth of a percent, so that shares are exact integers. */
  private static final double PARTS_PER_PERCENT = 1e6;

  private static final double SUM_TOLERANCE_PERCENT = 1e-3;

  private RecipeMass() {}

  /**
   * Grams of each component, in the recipe's order, that sum to the mass exactly.
   *
   * <p>Each share is rounded down; the grams left over go to the components with the largest
   * remainders, of equal ones to the one that is weighed first (method of the largest remainder).
   * So none is more than a gram off its share.
   *
   * @param massG mass of the ink without agent, g, at least 0
   * @param recipe components whose percentages sum to 100 within 0.001
   * @throws IllegalArgumentException if the mass is negative or the recipe does not sum to 100
   */
  public static List<Integer> components(int massG, List<Component> recipe) {
    requireMass(massG);
    long[] parts =
        recipe.stream().mapToLong(c -> Math.round(c.percent() * PARTS_PER_PERCENT)).toArray();
    long whole = IntStream.range(0, parts.length).mapToLong(i -> parts[i]).sum();
    if (Math.abs(whole / PARTS_PER_PERCENT - 100) > SUM_TOLERANCE_PERCENT) {
      throw new IllegalArgumentException(
          "the recipe sums to " + whole / PARTS_PER_PERCENT + " %, must sum to 100 %");
    }
    List<Integer> grams = new ArrayList<>();
    int left = massG;
    for (long part : parts) {
      int share = (int) (massG * part / whole);
      grams.add(share);
      left -= share;
    }
    IntStream.range(0, parts.length)
        .boxed()
        .sorted(Comparator.comparingLong(i -> -(massG * parts[i] % whole)))
        .limit(left)
        .forEach(i -> grams.set(i, grams.get(i) + 1));
    return List.copyOf(grams);
  }

  /**
   * Agent for a batch, g, added on top of its mass, rounded to the nearest step of the scale (half
   * a step up).
   *
   * @param massG mass of the ink without agent, g, at least 0
   * @param agentPercent agent in percent of that mass, at least 0
   * @param scaleStepG step of the scale, g, at least 1
   * @throws IllegalArgumentException if a value is out of range
   */
  public static int agentG(int massG, double agentPercent, int scaleStepG) {
    requireMass(massG);
    requireStep(scaleStepG);
    if (!(agentPercent >= 0) || Double.isInfinite(agentPercent)) {
      throw new IllegalArgumentException("agentPercent is " + agentPercent + ", must be 0 or more");
    }
    long agentParts = Math.round(agentPercent * PARTS_PER_PERCENT) * massG;
    long partsPerStep = (long) (100 * PARTS_PER_PERCENT) * scaleStepG;
    return Math.toIntExact((2 * agentParts + partsPerStep) / (2 * partsPerStep) * scaleStepG);
  }

  /**
   * The least multiple of the step that is not below the mass, g.
   *
   * @param g mass, g, at least 0
   * @param stepG step, g, at least 1
   * @throws IllegalArgumentException if a value is out of range
   * @throws ArithmeticException if the result does not fit an int
   */
  public static int roundUpToStep(int g, int stepG) {
    requireMass(g);
    requireStep(stepG);
    return Math.toIntExact(((long) g + stepG - 1) / stepG * stepG);
  }

  private static void requireMass(int massG) {
    if (massG < 0) {
      throw new IllegalArgumentException("the mass is " + massG + " g, must be 0 or more");
    }
  }

  private static void requireStep(int stepG) {
    if (stepG < 1) {
      throw new IllegalArgumentException("the step is " + stepG + " g, must be 1 or more");
    }
  }
}
