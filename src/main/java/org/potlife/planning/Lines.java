package org.potlife.planning;

import java.util.Arrays;

/**
 * The lines of all presses as a search changes them: one change at a time, in place, and taken back
 * when it does not please. Knows of each run where it stands.
 */
final class Lines {

  private final int[][] runs;
  private final int[] lengths;
  private final int[] pressOf;
  private final int[] placeOf;
  private final int[][] saved = new int[2][];
  private final int[] savedLength = new int[2];
  private final int[] changed = {-1, -1};
  private int firstChanged;
  private int secondChanged;
  private int firstChangedTo;
  private int secondChangedTo;

  Lines(int presses, int movable) {
    runs = new int[presses][movable];
    lengths = new int[presses];
    pressOf = new int[movable];
    placeOf = new int[movable];
    saved[0] = new int[movable];
    saved[1] = new int[movable];
  }

  void set(int[][] sequences, int[] counts) {
    for (int press = 0; press < runs.length; press++) {
      System.arraycopy(sequences[press], 0, runs[press], 0, counts[press]);
      lengths[press] = counts[press];
      index(press, 0);
    }
    changed[0] = -1;
    changed[1] = -1;
  }

  int[][] runs() {
    return runs;
  }

  int[] lengths() {
    return lengths;
  }

  int length(int press) {
    return lengths[press];
  }

  int run(int press, int place) {
    return runs[press][place];
  }

  int pressOf(int run) {
    return pressOf[run];
  }

  int placeOf(int run) {
    return placeOf[run];
  }

  /** The press of the first or second line of the last change; -1 if only one line changed. */
  int changedPress(int which) {
    return changed[which];
  }

  /** The first place that differs since the last change. */
  int changedFrom(int which) {
    return which == 0 ? firstChanged : secondChanged;
  }

  /** The first place from which the line goes on as before the last change. */
  int changedTo(int which) {
    return which == 0 ? firstChangedTo : secondChangedTo;
  }

  int lengthBefore(int which) {
    return savedLength[which];
  }

  /**
   * Takes a stretch out of a line and puts it into another, or into what is left of the same one.
   */
  void move(int from, int at, int count, int to, int place) {
    if (from == to) {
      save(from, -1);
      int[] line = runs[from];
      int[] old = saved[0];
      int left = lengths[from] - count;
      int low = Math.min(at, place);
      for (int i = low; i < lengths[from]; i++) {
        if (i >= place && i < place + count) {
          line[i] = old[at + i - place];
        } else {
          int ofLeft = i < place ? i : i - count;
          line[i] = old[ofLeft < at ? ofLeft : ofLeft + count];
        }
      }
      assert place <= left;
      firstChanged = low;
      firstChangedTo = Math.max(at, place) + count;
      index(from, low);
    } else {
      swap(from, at, count, to, place, 0);
    }
  }

  /** Exchanges a stretch of one line with a stretch of another. */
  void swap(int a, int atA, int countA, int b, int atB, int countB) {
    save(a, b);
    replace(a, atA, countA, saved[1], atB, countB);
    replace(b, atB, countB, saved[0], atA, countA);
    firstChanged = atA;
    secondChanged = atB;
    firstChangedTo = atA + countB;
    secondChangedTo = atB + countA;
    index(a, atA);
    index(b, atB);
  }

  private void replace(int press, int at, int count, int[] from, int fromAt, int fromCount) {
    int[] line = runs[press];
    int tail = lengths[press] - at - count;
    System.arraycopy(line, at + count, line, at + fromCount, tail);
    System.arraycopy(from, fromAt, line, at, fromCount);
    lengths[press] += fromCount - count;
  }

  /** Exchanges two stretches of one line; the first lies before the second. */
  void swapWithin(int press, int at, int count, int later, int laterCount) {
    save(press, -1);
    int[] line = runs[press];
    int[] old = saved[0];
    int place = at;
    System.arraycopy(old, later, line, place, laterCount);
    place += laterCount;
    System.arraycopy(old, at + count, line, place, later - at - count);
    place += later - at - count;
    System.arraycopy(old, at, line, place, count);
    firstChanged = at;
    firstChangedTo = later + laterCount;
    index(press, at);
  }

  /** A change that was taken back and may be made again. */
  static final class Change {

    private final int[] press = {-1, -1};
    private final int[] from = new int[2];
    private final int[] to = new int[2];
    private final int[] length = new int[2];
    private final int[][] line = new int[2][];

    Change(int movable) {
      line[0] = new int[movable];
      line[1] = new int[movable];
    }
  }

  /** Notes the last change. */
  void note(Change change) {
    for (int which = 0; which < 2; which++) {
      int press = changed[which];
      change.press[which] = press;
      if (press >= 0) {
        int from = changedFrom(which);
        change.from[which] = from;
        change.to[which] = changedTo(which);
        change.length[which] = lengths[press];
        System.arraycopy(runs[press], from, change.line[which], from, lengths[press] - from);
      }
    }
  }

  /** Makes a change again, on the lines as they were before it. */
  void redo(Change change) {
    save(change.press[0], change.press[1]);
    firstChanged = change.from[0];
    firstChangedTo = change.to[0];
    secondChanged = change.from[1];
    secondChangedTo = change.to[1];
    for (int which = 0; which < 2; which++) {
      int press = changed[which];
      if (press >= 0) {
        int from = changedFrom(which);
        lengths[press] = change.length[which];
        System.arraycopy(change.line[which], from, runs[press], from, lengths[press] - from);
        index(press, from);
      }
    }
  }

  /** Takes the last change back. */
  void undo() {
    for (int which = 0; which < 2; which++) {
      int press = changed[which];
      if (press >= 0) {
        int at = changedFrom(which);
        System.arraycopy(saved[which], at, runs[press], at, savedLength[which] - at);
        lengths[press] = savedLength[which];
        index(press, at);
      }
    }
  }

  private void save(int first, int second) {
    changed[0] = first;
    changed[1] = second;
    for (int which = 0; which < 2; which++) {
      int press = changed[which];
      if (press >= 0) {
        System.arraycopy(runs[press], 0, saved[which], 0, lengths[press]);
        savedLength[which] = lengths[press];
      }
    }
  }

  private void index(int press, int from) {
    int[] line = runs[press];
    for (int i = from; i < lengths[press]; i++) {
      pressOf[line[i]] = press;
      placeOf[line[i]] = i;
    }
  }

  /** Lines as they were at some time. */
  static final class Copy {

    private final int[][] runs;
    private final int[] lengths;

    private Copy(int presses, int movable) {
      runs = new int[presses][movable];
      lengths = new int[presses];
    }
  }

  /** Room for a copy. */
  Copy newCopy() {
    return new Copy(runs.length, pressOf.length);
  }

  void copyTo(Copy copy) {
    for (int press = 0; press < runs.length; press++) {
      System.arraycopy(runs[press], 0, copy.runs[press], 0, lengths[press]);
      copy.lengths[press] = lengths[press];
    }
  }

  void set(Copy copy) {
    set(copy.runs, copy.lengths);
  }

  int[][] copyOfRuns() {
    return Arrays.stream(runs).map(int[]::clone).toArray(int[][]::new);
  }
}
