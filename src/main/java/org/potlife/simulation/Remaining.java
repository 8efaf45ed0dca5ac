package org.potlife.simulation;

/** How much two sets of sequences have in common at their ends, and what that says of positions. */
final class Remaining {

  private final int[] common;
  private final int[] shift;
  private final int[] lengths;
  private final int[] left;

  Remaining(int presses) {
    common = new int[presses];
    shift = new int[presses];
    lengths = new int[presses];
    left = new int[presses];
  }

  void compare(int[][] base, int[] baseLengths, int[][] sequences, int[] newLengths) {
    for (int press = 0; press < common.length; press++) {
      int i = baseLengths[press] - 1;
      int j = newLengths[press] - 1;
      shift[press] = j - i;
      while (i >= 0 && j >= 0 && base[press][i] == sequences[press][j]) {
        i--;
        j--;
      }
      lengths[press] = newLengths[press];
      common[press] = lengths[press] - 1 - j;
    }
  }

  /** Whether from these positions on the same runs remain on every press. */
  boolean same(int[] position, int[] basePosition) {
    for (int press = 0; press < common.length; press++) {
      left[press] = lengths[press] - position[press];
      if (left[press] > common[press] || position[press] != basePosition[press] + shift[press]) {
        return false;
      }
    }
    return true;
  }

  /** By press, runs that remain where {@link #same} was asked last. */
  int[] byPress() {
    return left;
  }

  /** Positions of the new sequences that leave the same runs. */
  void shift(int[] basePosition, int[] position) {
    for (int press = 0; press < shift.length; press++) {
      position[press] = basePosition[press] + shift[press];
    }
  }
}
