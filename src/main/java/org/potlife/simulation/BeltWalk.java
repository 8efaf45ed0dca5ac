package org.potlife.simulation;

import java.util.Arrays;

/**
 * Walks a run along its dryer's timetable: the rate follows what the belt and its heat leave (R14,
 * R15, R16), so the press never runs ahead of the dryer (R16a). Keeps the rates of the last walk.
 */
final class BeltWalk {

  /** The run would not end within its span. */
  static final int TOO_LONG = -1;

  /** The dryer is in the way; see {@link #blockedUntil}. */
  static final int BLOCKED = -2;

  private int[] from = new int[32];
  private int[] to = new int[32];
  private int[] rate = new int[32];
  private int count;
  private int trialRate;
  private int blockedUntil;
  private boolean blockedAtFirstPiece;

  /**
   * Tells when the last piece is printed, or {@link #TOO_LONG} or {@link #BLOCKED}.
   *
   * @param firstPiece start of the trial pieces, s
   * @param print start of production, s
   * @param spanLast last staffed stretch in which it may print
   */
  int walk(
      BeltBook belt,
      DryerSpec dryer,
      PressSpec press,
      RunSpec.BeltFeed feed,
      int firstPiece,
      int print,
      int spanLast,
      int pieces) {
    count = 0;
    int trial = firstPiece < print ? Math.min(press.trialPieces(), pieces) : 0;
    trialRate = trial == 0 ? 0 : (trial * 3600 + press.firstPieceS() - 1) / press.firstPieceS();
    int step = belt.stepAt(firstPiece);
    for (int t = firstPiece; t < print; t = belt.stepEnd(step), step++) {
      if (room(belt, step, dryer, feed) < trialRate) {
        return blocked(belt.stepEnd(step), true);
      }
      if (belt.stepEnd(step) >= print) {
        break;
      }
    }
    int end = production(belt, dryer, press, feed, print, spanLast, (pieces - trial) * 3600);
    if (end < 0) {
      return end;
    }
    return tailFree(belt, feed, end, end + dryer.transitS()) ? end : BLOCKED;
  }

  private int production(
      BeltBook belt,
      DryerSpec dryer,
      PressSpec press,
      RunSpec.BeltFeed feed,
      int print,
      int spanLast,
      int work) {
    if (work == 0) {
      return print;
    }
    StaffedTime staffed = press.staffed();
    int stretch = staffed.stretchAt(print);
    if (stretch > spanLast) {
      return TOO_LONG;
    }
    int step = belt.stepAt(print);
    if (belt.least(step) > feed.speedLimit()) {
      return blocked(belt.stepEnd(step), false);
    }
    // a set-up may end where a break begins
    int t = Math.max(print, staffed.start(stretch));
    int left = work;
    while (left > 0) {
      if (t >= staffed.end(stretch)) {
        stretch++;
        if (stretch > spanLast) {
          return TOO_LONG;
        }
        t = staffed.start(stretch);
      }
      while (belt.stepEnd(step) <= t) {
        step++;
        if (belt.least(step) > feed.speedLimit()) {
          return blocked(belt.stepEnd(step), false);
        }
      }
      int allowed = Math.min(press.rate(), room(belt, step, dryer, feed));
      if (allowed < press.minRate()) {
        return blocked(belt.stepEnd(step), false);
      }
      int end = Math.min(staffed.end(stretch), belt.stepEnd(step));
      int needed = (left + allowed - 1) / allowed;
      if (needed <= end - t) {
        end = t + needed;
        left = 0;
      } else {
        left -= allowed * (end - t);
      }
      add(t, end, allowed);
      t = end;
    }
    return t;
  }

  /** What is in the tunnel behind the last stroke still slows the belt for the others. */
  private boolean tailFree(BeltBook belt, RunSpec.BeltFeed feed, int end, int off) {
    int step = belt.stepAt(end);
    while (true) {
      if (belt.least(step) > feed.speedLimit()) {
        blocked(belt.stepEnd(step), false);
        return false;
      }
      if (belt.stepEnd(step) >= off) {
        return true;
      }
      step++;
    }
  }

  /** Most pieces per hour that the belt takes in a step; negative when it may not be slowed. */
  private static int room(BeltBook belt, int step, DryerSpec dryer, RunSpec.BeltFeed feed) {
    int speed = Math.min(belt.speed(step), feed.speedLimit());
    int byArea =
        belt.least(step) > speed
            ? -1
            : feed.areaPerRate() == 0
                ? Integer.MAX_VALUE
                : (speed - belt.area(step)) / feed.areaPerRate();
    int heatLeft = dryer.usableHeat() - belt.heat(step);
    int byHeat =
        feed.heatPerRate() == 0 ? Integer.MAX_VALUE : Math.max(0, heatLeft) / feed.heatPerRate();
    return Math.min(byArea, byHeat);
  }

  private int blocked(int until, boolean atFirstPiece) {
    blockedUntil = until;
    blockedAtFirstPiece = atFirstPiece;
    return BLOCKED;
  }

  private void add(int start, int end, int piecesPerHour) {
    if (count > 0 && rate[count - 1] == piecesPerHour && to[count - 1] == start) {
      to[count - 1] = end;
      return;
    }
    if (count == from.length) {
      from = Arrays.copyOf(from, count * 2);
      to = Arrays.copyOf(to, count * 2);
      rate = Arrays.copyOf(rate, count * 2);
    }
    from[count] = start;
    to[count] = end;
    rate[count] = piecesPerHour;
    count++;
  }

  /**
   * Puts the run of the last walk onto the belt; returns what that adds to empty belt, 1/1000 s.
   */
  long book(BeltBook belt, RunSpec.BeltFeed feed, int firstPiece, int print, int off) {
    long before = belt.emptyMilliS(firstPiece, off);
    belt.occupy(firstPiece, off, feed.speedLimit());
    belt.feed(firstPiece, print, trialRate * feed.areaPerRate(), trialRate * feed.heatPerRate());
    for (int i = 0; i < count; i++) {
      belt.feed(from[i], to[i], rate[i] * feed.areaPerRate(), rate[i] * feed.heatPerRate());
    }
    return belt.emptyMilliS(firstPiece, off) - before;
  }

  /** When the step that was in the way ends, s. */
  int blockedUntil() {
    return blockedUntil;
  }

  /** Whether it was in the way of the first piece, rather than of production. */
  boolean blockedAtFirstPiece() {
    return blockedAtFirstPiece;
  }

  int count() {
    return count;
  }

  int from(int i) {
    return from[i];
  }

  int to(int i) {
    return to[i];
  }

  int rate(int i) {
    return rate[i];
  }
}
