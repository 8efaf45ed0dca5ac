package org.potlife.simulation;

import java.util.Arrays;

/** Loads of one drying cabinet in order of time; they never overlap (R6). */
final class CabinetBook {

  private int[] from = new int[16];
  private int[] shut = new int[16];
  private int[] dry = new int[16];
  private int[] stage = new int[16];
  private int[] frames = new int[16];
  private int count;

  /** Where the last search would put the screens: an existing load, or a new one before it. */
  private int found;

  private boolean foundJoins;
  private int foundEntry;

  void copyFrom(CabinetBook other) {
    count = other.count;
    ensure(count);
    System.arraycopy(other.from, 0, from, 0, count);
    System.arraycopy(other.shut, 0, shut, 0, count);
    System.arraycopy(other.dry, 0, dry, 0, count);
    System.arraycopy(other.stage, 0, stage, 0, count);
    System.arraycopy(other.frames, 0, frames, 0, count);
  }

  /**
   * When screens that arrive at {@code t} could be dry here; remembers the place for {@link #load}.
   */
  int search(ScreenRoomSpec.Cabinet cabinet, int dryStage, int screens, int t) {
    int first = count;
    while (first > 0 && dry[first - 1] > t) {
      first--;
    }
    int joined = StaffedTime.NEVER;
    for (int i = first; i < count; i++) {
      if (stage[i] == dryStage && shut[i] >= t && frames[i] + screens <= cabinet.frames()) {
        joined = dry[i];
        found = i;
        break;
      }
    }
    foundJoins = joined < StaffedTime.NEVER;
    if (foundJoins) {
      foundEntry = Math.max(t, from[found]);
    }
    int at = t;
    for (int i = first; i <= count; i++) {
      if (at >= joined) {
        return joined;
      }
      int opened = openedDryAt(cabinet, dryStage, at);
      if (i == count || opened <= from[i]) {
        if (opened < joined) {
          found = i;
          foundJoins = false;
          foundEntry = at;
          return opened;
        }
        return joined;
      }
      at = Math.max(at, dry[i]);
    }
    return joined;
  }

  private static int openedDryAt(ScreenRoomSpec.Cabinet cabinet, int dryStage, int at) {
    if (at >= StaffedTime.NEVER) {
      return StaffedTime.NEVER;
    }
    return cabinet.drying().dryAt(at + cabinet.gatherS(), cabinet.requiredPaS()[dryStage]);
  }

  /** When the screens of the last search go in. */
  int entry() {
    return foundEntry;
  }

  /** Loads the screens of the last search. */
  void load(ScreenRoomSpec.Cabinet cabinet, int dryStage, int screens, int dryAt) {
    if (foundJoins) {
      frames[found] += screens;
      return;
    }
    insert(found, foundEntry, foundEntry + cabinet.gatherS(), dryAt, dryStage, screens);
  }

  /** Takes the last {@link #load} back, while nothing else was loaded. */
  void unload(int screens) {
    if (foundJoins) {
      frames[found] -= screens;
      return;
    }
    count--;
    System.arraycopy(from, found + 1, from, found, count - found);
    System.arraycopy(shut, found + 1, shut, found, count - found);
    System.arraycopy(dry, found + 1, dry, found, count - found);
    System.arraycopy(stage, found + 1, stage, found, count - found);
    System.arraycopy(frames, found + 1, frames, found, count - found);
  }

  /** Enters a load that is under way; nothing can join it. */
  void block(int start, int end, int dryStage, int screens) {
    int i = count;
    while (i > 0 && from[i - 1] > start) {
      i--;
    }
    insert(i, start, Integer.MIN_VALUE, end, dryStage, screens);
  }

  private void insert(int i, int start, int shutAt, int dryAt, int dryStage, int screens) {
    ensure(count + 1);
    int moved = count - i;
    System.arraycopy(from, i, from, i + 1, moved);
    System.arraycopy(shut, i, shut, i + 1, moved);
    System.arraycopy(dry, i, dry, i + 1, moved);
    System.arraycopy(stage, i, stage, i + 1, moved);
    System.arraycopy(frames, i, frames, i + 1, moved);
    from[i] = start;
    shut[i] = shutAt;
    dry[i] = dryAt;
    stage[i] = dryStage;
    frames[i] = screens;
    count++;
  }

  private void ensure(int size) {
    if (size > from.length) {
      int length = Math.max(size, from.length * 2);
      from = Arrays.copyOf(from, length);
      shut = Arrays.copyOf(shut, length);
      dry = Arrays.copyOf(dry, length);
      stage = Arrays.copyOf(stage, length);
      frames = Arrays.copyOf(frames, length);
    }
  }
}
