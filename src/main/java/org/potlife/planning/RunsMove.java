package org.potlife.planning;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;

/**
 * Replaces a stretch of one line, or a stretch of each of two lines; together the stretches hold
 * the same runs before and after. Changes, swaps, and moves of blocks are all of this kind.
 */
final class RunsMove extends AbstractMove<Schedule> {

  /** A stretch of a line: {@code before} stands at {@code at}, {@code after} will. */
  record Stretch(PressLine line, int at, List<RunCard> before, List<RunCard> after) {

    Stretch back() {
      return new Stretch(line, at, after, before);
    }

    void apply(ScoreDirector<Schedule> director) {
      director.beforeListVariableChanged(line, PressLine.RUNS, at, at + before.size());
      List<RunCard> part = line.runs().subList(at, at + before.size());
      if (before.size() == after.size()) {
        for (int i = 0; i < after.size(); i++) {
          part.set(i, after.get(i));
        }
      } else {
        part.clear();
        line.runs().addAll(at, after);
      }
      director.afterListVariableChanged(line, PressLine.RUNS, at, at + after.size());
    }
  }

  private final Stretch first;
  private final Stretch second;

  RunsMove(Stretch first, Stretch second) {
    this.first = first;
    this.second = second;
  }

  /** Puts the run at {@code from} at {@code to}, a place counted after it was taken out. */
  static RunsMove within(PressLine line, int from, int to) {
    int low = Math.min(from, to);
    int high = Math.max(from, to);
    List<RunCard> before = List.copyOf(line.runs().subList(low, high + 1));
    List<RunCard> after = new ArrayList<>(before);
    after.add(to - low, after.remove(from - low));
    return new RunsMove(new Stretch(line, low, before, after), null);
  }

  /** Swaps two runs of one line. */
  static RunsMove swapWithin(PressLine line, int one, int other) {
    int low = Math.min(one, other);
    int high = Math.max(one, other);
    List<RunCard> before = List.copyOf(line.runs().subList(low, high + 1));
    List<RunCard> after = new ArrayList<>(before);
    after.set(0, before.get(before.size() - 1));
    after.set(after.size() - 1, before.get(0));
    return new RunsMove(new Stretch(line, low, before, after), null);
  }

  /** Exchanges a stretch of one line with a stretch of another; either may be empty. */
  static RunsMove between(PressLine a, int fromA, int toA, PressLine b, int fromB, int toB) {
    List<RunCard> partA = List.copyOf(a.runs().subList(fromA, toA));
    List<RunCard> partB = List.copyOf(b.runs().subList(fromB, toB));
    return new RunsMove(new Stretch(a, fromA, partA, partB), new Stretch(b, fromB, partB, partA));
  }

  @Override
  public boolean isMoveDoable(ScoreDirector<Schedule> director) {
    return !first.before().equals(first.after());
  }

  @Override
  protected RunsMove createUndoMove(ScoreDirector<Schedule> director) {
    return new RunsMove(first.back(), second == null ? null : second.back());
  }

  @Override
  protected void doMoveOnGenuineVariables(ScoreDirector<Schedule> director) {
    first.apply(director);
    if (second != null) {
      second.apply(director);
    }
  }

  @Override
  public Collection<?> getPlanningEntities() {
    return second == null ? List.of(first.line()) : List.of(first.line(), second.line());
  }

  @Override
  public Collection<?> getPlanningValues() {
    List<RunCard> values = new ArrayList<>(first.before());
    if (second != null) {
      values.addAll(second.before());
    }
    return values;
  }
}
