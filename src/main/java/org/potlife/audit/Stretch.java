package org.potlife.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A stretch of time, from inclusive to exclusive.
 *
 * @param from epoch seconds
 * @param to epoch seconds, not before {@code from}
 */
record Stretch(long from, long to) {

  long seconds() {
    return to - from;
  }

  boolean holds(long start, long end) {
    return from <= start && end <= to;
  }

  /** Whether they have time in common; a moment has none. */
  boolean overlaps(Stretch other) {
    return Math.max(from, other.from) < Math.min(to, other.to);
  }

  Stretch later(long seconds) {
    return new Stretch(from + seconds, to + seconds);
  }

  /** Joins stretches that overlap or are at most {@code gap} seconds apart. */
  static List<Stretch> join(List<Stretch> stretches, long gap) {
    List<Stretch> joined = new ArrayList<>();
    for (Stretch next :
        stretches.stream().sorted(Comparator.comparingLong(Stretch::from)).toList()) {
      int last = joined.size() - 1;
      if (last >= 0 && next.from - joined.get(last).to <= gap) {
        Stretch before = joined.get(last);
        joined.set(last, new Stretch(before.from, Math.max(before.to, next.to)));
      } else {
        joined.add(next);
      }
    }
    return joined;
  }

  /** What is left of this stretch without {@code cuts}. */
  List<Stretch> without(List<Stretch> cuts) {
    List<Stretch> left = List.of(this);
    for (Stretch cut : cuts) {
      List<Stretch> next = new ArrayList<>();
      for (Stretch piece : left) {
        if (!piece.overlaps(cut)) {
          next.add(piece);
          continue;
        }
        if (piece.from < cut.from) {
          next.add(new Stretch(piece.from, cut.from));
        }
        if (cut.to < piece.to) {
          next.add(new Stretch(cut.to, piece.to));
        }
      }
      left = next;
    }
    return left;
  }
}
