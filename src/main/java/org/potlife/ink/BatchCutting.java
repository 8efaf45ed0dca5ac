package org.potlife.ink;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How a need for one activated ink is cut into batches, by rules of thumb that need no plan: to
 * measure against them what a plan's own batches lose. A batch is ready at its first use and dies
 * with its pot life.
 *
 * @param standS rest between activation and first stroke, s, at least 0
 * @param potLifeS life from the end of activation, s, more than {@code standS}
 * @param containerG most ink in a batch, g, more than {@code reserveG}
 * @param reserveG reserve in a batch, g, at least 0
 * @param scaleStepG step of the scale, g, at least 1
 * @throws IllegalArgumentException if a batch could never serve anything
 */
public record BatchCutting(int standS, int potLifeS, int containerG, int reserveG, int scaleStepG) {

  /** Below this a rest is noise of the floating point, g. */
  private static final double NOISE_G = 1e-6;

  public BatchCutting {
    if (potLifeS <= standS || containerG <= reserveG) {
      throw new IllegalArgumentException(
          "a batch must outlive its stand time and hold more than its reserve: "
              + "pot life %d s, stand %d s, container %d g, reserve %d g"
                  .formatted(potLifeS, standS, containerG, reserveG));
    }
  }

  /**
   * What one run takes.
   *
   * @param fromS first stroke, s
   * @param toS last stroke, s, at least {@code fromS}
   * @param printG onto garments, handling loss included, spread evenly over the time, g
   * @param chargeG onto the screens at the first stroke, g
   */
  public record Need(long fromS, long toS, int printG, int chargeG) {}

  /**
   * Masses of the batches, g, when a batch holds what is used until the container or the pot life
   * ends, and the next takes over there. It may serve several runs, side by side too.
   */
  public List<Integer> knowingTheClock(List<Need> needs) {
    List<Open> open = open(needs);
    List<Integer> masses = new ArrayList<>();
    while (!open.isEmpty()) {
      double from = begin(open);
      double drawn = draw(open, from, from - standS + potLifeS, containerG - reserveG);
      masses.add(mass(drawn));
    }
    return masses;
  }

  /**
   * Masses of the batches, g, when all is activated for the first use: what is left at the end of
   * the pot life is thrown away, and the rest of the need is made anew in the same way.
   */
  public List<Integer> allAtOnce(List<Need> needs) {
    List<Open> open = open(needs);
    List<Integer> masses = new ArrayList<>();
    while (!open.isEmpty()) {
      double left = open.stream().mapToDouble(need -> need.printG + need.chargeG).sum();
      for (int roomG = containerG - reserveG; left > NOISE_G; left -= roomG) {
        masses.add(mass(Math.min(left, roomG)));
      }
      double from = begin(open);
      draw(open, from, from - standS + potLifeS, Double.POSITIVE_INFINITY);
    }
    return masses;
  }

  private int mass(double drawnG) {
    int wholeG = (int) Math.ceil(Math.max(0, drawnG - NOISE_G));
    return RecipeMass.roundUpToStep(wholeG + reserveG, scaleStepG);
  }

  private static List<Open> open(List<Need> needs) {
    List<Open> open = new ArrayList<>(needs.stream().map(Open::new).toList());
    open.removeIf(need -> need.isMet(Double.NEGATIVE_INFINITY));
    open.sort(Comparator.comparingDouble(need -> need.from));
    return open;
  }

  private static double begin(List<Open> open) {
    return open.stream().mapToDouble(need -> need.from).min().orElseThrow();
  }

  /** Draws from one batch until it is empty, dead, or nothing is left to do; grams drawn. */
  private static double draw(List<Open> open, double from, double useBy, double roomG) {
    double drawn = 0;
    double t = from;
    boolean full = false;
    while (!full && t < useBy) {
      for (Open need : open) {
        if (need.from <= t && need.chargeG > 0 && !full) {
          // a charge is not shared between two batches
          full = drawn > 0 && drawn + need.chargeG > roomG;
          drawn += full ? 0 : need.chargeG;
          need.chargeG = full ? need.chargeG : 0;
        }
      }
      double end = Math.min(useBy, nextChange(open, t));
      if (full || end == Double.POSITIVE_INFINITY) {
        break;
      }
      double now = t;
      double rate = open.stream().mapToDouble(need -> need.rateAt(now)).sum();
      if (rate > 0 && rate * (end - t) > roomG - drawn + NOISE_G) {
        end = t + Math.max(0, roomG - drawn) / rate;
        full = true;
      }
      double until = end;
      open.forEach(need -> need.printG -= need.rateAt(now) * (until - now));
      drawn += rate * (end - t);
      t = end;
    }
    double stopped = t;
    open.removeIf(need -> need.isMet(stopped));
    open.forEach(need -> need.from = Math.max(need.from, stopped));
    return drawn;
  }

  private static double nextChange(List<Open> open, double t) {
    return open.stream()
        .mapToDouble(
            need -> need.from > t ? need.from : need.to > t ? need.to : Double.POSITIVE_INFINITY)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** A need that is not met in full. */
  private static final class Open {
    private final double to;
    private final double rate;
    private double from;
    private double printG;
    private double chargeG;

    Open(Need need) {
      from = need.fromS();
      // what is drawn in no time takes a second all the same
      to = Math.max(need.toS(), need.fromS() + 1);
      rate = need.printG() / (to - from);
      printG = need.printG();
      chargeG = need.chargeG();
    }

    double rateAt(double t) {
      return from <= t && t < to ? rate : 0;
    }

    boolean isMet(double t) {
      return chargeG == 0 && (to <= t || printG <= NOISE_G);
    }
  }
}
