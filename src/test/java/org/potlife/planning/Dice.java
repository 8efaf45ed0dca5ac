package org.potlife.planning;

import java.util.List;
import java.util.Random;

/** Chance with a seed, so that what went wrong once goes wrong again. */
final class Dice {

  private final Random random;

  Dice(long seed) {
    // neighbouring seeds of Random begin alike
    random = new Random(seed * 0x9E3779B97F4A7C15L + 0x632BE59BD9B4E019L);
    random.nextLong();
  }

  /** A whole number, both ends included. */
  int in(int least, int most) {
    return least + random.nextInt(most - least + 1);
  }

  double real(double least, double most) {
    return least + random.nextDouble() * (most - least);
  }

  /** True in so many of a hundred cases. */
  boolean percent(int chance) {
    return random.nextInt(100) < chance;
  }

  @SafeVarargs
  final <T> T of(T... values) {
    return values[random.nextInt(values.length)];
  }

  <T> T of(List<T> values) {
    return values.get(random.nextInt(values.size()));
  }

  /** Mostly the usual value, else one of the others. */
  @SafeVarargs
  final <T> T mostly(T usual, T... others) {
    return percent(70) ? usual : others[random.nextInt(others.length)];
  }
}
