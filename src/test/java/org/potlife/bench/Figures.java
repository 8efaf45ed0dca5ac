package org.potlife.bench;

import java.util.List;

/** Means and the like. */
final class Figures {

  private Figures() {}

  static double median(List<Double> values) {
    if (values.isEmpty()) {
      return Double.NaN;
    }
    List<Double> sorted = values.stream().sorted().toList();
    int half = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half)) / 2;
  }

  static double mean(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
  }

  /** Of positive values. */
  static double geometricMean(List<Double> values) {
    return Math.exp(mean(values.stream().map(Math::log).toList()));
  }

  /** Standard deviation of the sample over its mean; 0 when all are 0. */
  static double spread(List<Double> values) {
    double mean = mean(values);
    double squares = values.stream().mapToDouble(value -> (value - mean) * (value - mean)).sum();
    return mean == 0 ? 0 : Math.sqrt(squares / Math.max(1, values.size() - 1)) / mean;
  }

  /** Both plus one minute, so that a plan with nothing late has a ratio too. */
  static double ratio(double ours, double theirs) {
    return (ours + 1) / (theirs + 1);
  }

  /** Slope of the line through the logarithms: the power by which y grows with x. */
  static double power(List<Double> x, List<Double> y) {
    double meanX = mean(x.stream().map(Math::log).toList());
    double meanY = mean(y.stream().map(Math::log).toList());
    double above = 0;
    double below = 0;
    for (int i = 0; i < x.size(); i++) {
      double dx = Math.log(x.get(i)) - meanX;
      above += dx * (Math.log(y.get(i)) - meanY);
      below += dx * dx;
    }
    return above / below;
  }
}
