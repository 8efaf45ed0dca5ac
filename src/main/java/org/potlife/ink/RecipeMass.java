package org.potlife.ink;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** What the ink room weighs for one batch (R9), in steps of its scale. */
public final class RecipeMass {

  /**
   * How far a recipe may be off 100 %, so that three times 33.33 % is a recipe. Shares are taken of
   * what the recipe does sum to.
   */
  public static final double SUM_TOLERANCE_PERCENT = 0.01;

  /** Percentages are read to a millionth of a percent, so that shares are exact integers. */
  private static final double PARTS_PER_PERCENT = 1e6;

  private static final double NOISE_PERCENT = 1e-9;

  private RecipeMass() {}

  /**
   * Grams of each component, in the recipe's order: multiples of the scale's step that sum to the
   * mass exactly.
   *
   * <p>Each share is rounded down to a step; the steps left over go to the components with the
   * largest remainders, of equal ones to the one that is weighed first (method of the largest
   * remainder). So none is a step or more off its share.
   *
   * @param massG mass of the ink without agent, g, at least 0, a multiple of the step
   * @param recipe components whose percentages sum to 100 within 0.01
   * @param scaleStepG step of the scale, g, at least 1
   * @throws IllegalArgumentException if a value is out of range, the mass is no multiple of the
   *     step, or the recipe does not sum to 100
   */
  public static List<Integer> components(int massG, List<Component> recipe, int scaleStepG) {
    requireMass(massG);
    requireStep(scaleStepG);
    if (massG % scaleStepG != 0) {
      throw new IllegalArgumentException(
          "the mass is " + massG + " g, must be a multiple of the step of " + scaleStepG + " g");
    }
    long[] parts =
        recipe.stream().mapToLong(c -> Math.round(c.percent() * PARTS_PER_PERCENT)).toArray();
    long whole = IntStream.range(0, parts.length).mapToLong(i -> parts[i]).sum();
    if (Math.abs(whole / PARTS_PER_PERCENT - 100) > SUM_TOLERANCE_PERCENT + NOISE_PERCENT) {
      throw new IllegalArgumentException(
          "the recipe sums to " + whole / PARTS_PER_PERCENT + " %, must sum to 100 %");
    }
    int steps = massG / scaleStepG;
    List<Integer> grams = new ArrayList<>();
    int left = steps;
    for (long part : parts) {
      int share = (int) (steps * part / whole);
      grams.add(share * scaleStepG);
      left -= share;
    }
    IntStream.range(0, parts.length)
        .boxed()
        .sorted(Comparator.comparingLong(i -> -(steps * parts[i] % whole)))
        .limit(left)
        .forEach(i -> grams.set(i, grams.get(i) + scaleStepG));
    return List.copyOf(grams);
  }

  /**
   * Agent for a batch, g, added on top of its mass: of the scale's steps within the system's limits
   * the one nearest to the ink's percentage (half a step up). Only where the batch is so small that
   * no step lies within the limits is it the nearest of all.
   *
   * @param massG mass of the ink without agent, g, at least 0
   * @param agentPercent agent in percent of that mass, at least 0
   * @param leastPercent least agent of the ink's system, percent
   * @param mostPercent most agent of the ink's system, percent
   * @param scaleStepG step of the scale, g, at least 1
   * @throws IllegalArgumentException if a value is out of range
   */
  public static int agentG(
      int massG, double agentPercent, double leastPercent, double mostPercent, int scaleStepG) {
    requireMass(massG);
    requireStep(scaleStepG);
    if (!(agentPercent >= 0) || Double.isInfinite(agentPercent)) {
      throw new IllegalArgumentException("agentPercent is " + agentPercent + ", must be 0 or more");
    }
    long perStep = (long) (100 * PARTS_PER_PERCENT) * scaleStepG;
    long steps = (2 * parts(massG, agentPercent) + perStep) / (2 * perStep);
    long least = (parts(massG, leastPercent) + perStep - 1) / perStep;
    long most = parts(massG, mostPercent) / perStep;
    if (least <= most) {
      steps = Math.max(least, Math.min(most, steps));
    }
    return Math.toIntExact(steps * scaleStepG);
  }

  private static long parts(int massG, double percent) {
    return Math.round(percent * PARTS_PER_PERCENT) * massG;
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
