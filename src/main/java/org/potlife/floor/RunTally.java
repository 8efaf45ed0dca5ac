package org.potlife.floor;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What the marks of one run add up to, in whatever order they came in: the earliest start and
 * approval; the highest count, of equal ones the latest; the first end, after which nothing counts
 * but what is found spoiled. What is found spoiled after the count moves from good to spoiled.
 *
 * @param started null when nobody told
 * @param approved null when nobody told
 * @param counted null without a count
 * @param good pieces
 * @param spoiled pieces
 * @param ended null while it runs
 */
public record RunTally(
    Instant first,
    Instant started,
    Instant approved,
    Instant counted,
    int good,
    int spoiled,
    Instant ended) {

  /** What a mark tells. */
  public enum Kind {
    STARTED,
    APPROVED,
    COUNTED,
    SPOILED,
    ENDED
  }

  /**
   * One thing that was told.
   *
   * @param good cumulative good pieces of a count or an end, else 0
   * @param spoiled cumulative spoiled pieces of a count or an end, further ones of what was found
   */
  public record Mark(Kind kind, Instant at, int good, int spoiled) {

    private int printed() {
      return good + spoiled;
    }
  }

  /**
   * Adds up.
   *
   * @return empty without a mark
   */
  public static Optional<RunTally> of(List<Mark> marks) {
    if (marks.isEmpty()) {
      return Optional.empty();
    }
    Instant ended = earliest(marks, Kind.ENDED);
    Optional<Mark> count =
        marks.stream()
            .filter(mark -> mark.kind() == (ended == null ? Kind.COUNTED : Kind.ENDED))
            .filter(mark -> ended == null || mark.at().equals(ended))
            .max(Comparator.comparingInt(Mark::printed).thenComparing(Mark::at));
    Instant counted = count.map(Mark::at).orElse(null);
    int found =
        marks.stream()
            .filter(mark -> mark.kind() == Kind.SPOILED)
            .filter(mark -> counted != null && mark.at().isAfter(counted))
            .mapToInt(Mark::spoiled)
            .sum();
    int good = count.map(Mark::good).orElse(0);
    int moved = Math.min(good, found);
    Instant first = marks.stream().map(Mark::at).min(Comparator.naturalOrder()).orElseThrow();
    return Optional.of(
        new RunTally(
            first,
            earliest(marks, Kind.STARTED),
            earliest(marks, Kind.APPROVED),
            counted,
            good - moved,
            count.map(Mark::spoiled).orElse(0) + moved,
            ended));
  }

  private static Instant earliest(List<Mark> marks, Kind kind) {
    return marks.stream()
        .filter(mark -> mark.kind() == kind)
        .map(Mark::at)
        .min(Comparator.naturalOrder())
        .orElse(null);
  }
}
