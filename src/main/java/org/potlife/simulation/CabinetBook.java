package org.potlife.simulation;

import java.util.Arrays;

/**
 * Loads of one drying cabinet in order of time; they never overlap (R6). The columns of a load lie
 * side by side, since they are read together.
 */
final class CabinetBook {

  private static final int FROM = 0;
  private static final int SHUT = 1;
  private static final int DRY = 2;
  private static final int STAGE = 3;
  private static final int FRAMES = 4;
  private static final int COLUMNS = 5;

  private int[] rows = new int[16 * COLUMNS];
  private int count;

  /** Where the last search would put the screens: an existing load, or a new one before it. */
  private int found;

  private boolean foundJoins;
  private int foundEntry;

  void copyFrom(CabinetBook other) {
    count = other.count;
    ensure(count);
    System.arraycopy(other.rows, 0, rows, 0, count * COLUMNS);
  }

  /**
   * When screens that arrive at {@code t} could be dry here; remembers the place for {@link #load}.
   * A time that is not before {@code bound} is no help and need not be right.
   */
  int search(
      ScreenRoomSpec.Cabinet cabinet,
      CabinetKind kind,
      int dryStage,
      int screens,
      int t,
      int bound) {
    int end = count * COLUMNS;
    int first = end;
    while (first > 0 && rows[first - COLUMNS + DRY] > t) {
      first -= COLUMNS;
    }
    int joined = join(cabinet, dryStage, screens, t, first, bound);
    int best = Math.min(joined, bound);
    int gather = cabinet.gatherS();
    int at = t;
    for (int load = first; load <= end; load += COLUMNS) {
      if (at + gather >= best) {
        return joined;
      }
      // nothing dries while it is gathered: most gaps are too short for that alone
      if (load == end || at + gather < rows[load + FROM]) {
        int opened = kind.dryAt(at, dryStage, best);
        if (load == end || opened <= rows[load + FROM]) {
          if (opened < best) {
            found = load;
            foundJoins = false;
            foundEntry = at;
            return opened;
          }
          return joined;
        }
      }
      at = Math.max(at, rows[load + DRY]);
    }
    return joined;
  }

  private int join(
      ScreenRoomSpec.Cabinet cabinet, int dryStage, int screens, int t, int first, int bound) {
    int most = cabinet.frames() - screens;
    for (int load = first; load < count * COLUMNS && rows[load + DRY] < bound; load += COLUMNS) {
      if (rows[load + STAGE] == dryStage && rows[load + SHUT] >= t && rows[load + FRAMES] <= most) {
        found = load;
        foundJoins = true;
        foundEntry = Math.max(t, rows[load + FROM]);
        return rows[load + DRY];
      }
    }
    return StaffedTime.NEVER;
  }

  /** When the screens of the last search go in. */
  int entry() {
    return foundEntry;
  }

  /** Loads the screens of the last search. */
  void load(ScreenRoomSpec.Cabinet cabinet, int dryStage, int screens, int dryAt) {
    if (foundJoins) {
      rows[found + FRAMES] += screens;
      return;
    }
    insert(found, foundEntry, foundEntry + cabinet.gatherS(), dryAt, dryStage, screens);
  }

  /** Takes the last {@link #load} back, while nothing else was loaded. */
  void unload(int screens) {
    if (foundJoins) {
      rows[found + FRAMES] -= screens;
      return;
    }
    count--;
    System.arraycopy(rows, found + COLUMNS, rows, found, count * COLUMNS - found);
  }

  /** Enters a load that is under way; nothing can join it. */
  void block(int start, int end, int dryStage, int screens) {
    int load = count * COLUMNS;
    while (load > 0 && rows[load - COLUMNS + FROM] > start) {
      load -= COLUMNS;
    }
    insert(load, start, Integer.MIN_VALUE, end, dryStage, screens);
  }

  private void insert(int load, int start, int shutAt, int dryAt, int dryStage, int screens) {
    ensure(count + 1);
    System.arraycopy(rows, load, rows, load + COLUMNS, count * COLUMNS - load);
    rows[load + FROM] = start;
    rows[load + SHUT] = shutAt;
    rows[load + DRY] = dryAt;
    rows[load + STAGE] = dryStage;
    rows[load + FRAMES] = screens;
    count++;
  }

  private void ensure(int size) {
    if (size * COLUMNS > rows.length) {
      rows = Arrays.copyOf(rows, Math.max(size * COLUMNS, rows.length * 2));
    }
  }
}
