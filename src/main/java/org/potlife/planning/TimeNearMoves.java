package org.potlife.planning;

import java.util.Iterator;
import java.util.List;
import java.util.Random;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import org.potlife.simulation.Problem;
import org.potlife.simulation.RunSpec;

/**
 * Moves between places whose simulated times are near: a run, or a short block, goes to or swaps
 * with a place of about its own time on any press that takes it; some land earlier on purpose, some
 * beside a run with the same screens or inks. Blind moves over the whole list mostly ask for what
 * cannot pay.
 */
public class TimeNearMoves implements MoveIteratorFactory<Schedule, RunsMove> {

  private static final int MOST_TRIES = 200;

  @Override
  public long getSize(ScoreDirector<Schedule> director) {
    long n = director.getWorkingSolution().desk().problem().movable();
    return Math.max(1, n * n);
  }

  @Override
  public Iterator<RunsMove> createOriginalMoveIterator(ScoreDirector<Schedule> director) {
    throw new UnsupportedOperationException("only random selection");
  }

  @Override
  public Iterator<RunsMove> createRandomMoveIterator(
      ScoreDirector<Schedule> director, Random random) {
    Schedule schedule = director.getWorkingSolution();
    return new Moves(schedule.lines(), schedule.desk(), random);
  }

  private static final class Moves implements Iterator<RunsMove> {

    private final List<PressLine> lines;
    private final SearchDesk desk;
    private final Problem problem;
    private final Random random;

    Moves(List<PressLine> lines, SearchDesk desk, Random random) {
      this.lines = lines;
      this.desk = desk;
      this.random = random;
      problem = desk.problem();
    }

    @Override
    public boolean hasNext() {
      return problem.movable() > 1;
    }

    @Override
    public RunsMove next() {
      for (int i = 0; i < MOST_TRIES; i++) {
        RunsMove move = tryOne();
        if (move != null) {
          return move;
        }
      }
      PressLine line = longest();
      return RunsMove.swapWithin(line, 0, line.runs().size() - 1);
    }

    private PressLine longest() {
      PressLine longest = lines.get(0);
      for (PressLine line : lines) {
        longest = line.runs().size() > longest.runs().size() ? line : longest;
      }
      return longest;
    }

    private RunsMove tryOne() {
      PressLine line = randomLine();
      int at = random.nextInt(line.runs().size());
      if (random.nextInt(3) == 0) {
        at = lateOf(line, at);
      }
      RunSpec run = spec(line, at);
      PressLine target = lines.get(random.nextInt(lines.size()));
      if (!run.presses()[target.press()]) {
        return null;
      }
      int near = near(target, line, at);
      int kind = random.nextInt(10);
      if (target == line) {
        return withinLine(line, at, near, kind);
      }
      if (kind < 5) {
        return RunsMove.between(line, at, at + 1, target, near, near);
      }
      if (kind < 8) {
        return swap(line, at, 1, target, near, 1);
      }
      int block = 2 + random.nextInt(3);
      return kind == 8
          ? swap(line, at, block, target, near, 0)
          : swap(line, at, block, target, near, 1 + random.nextInt(block));
    }

    /** A line, each run being as likely. */
    private PressLine randomLine() {
      int pick = random.nextInt(problem.movable());
      for (PressLine line : lines) {
        if (pick < line.runs().size()) {
          return line;
        }
        pick -= line.runs().size();
      }
      throw new IllegalStateException("runs are missing from the lines");
    }

    /** Of a few runs of the line, the one that is latest against its due date. */
    private int lateOf(PressLine line, int at) {
      int worst = at;
      for (int i = 0; i < 3; i++) {
        int other = random.nextInt(line.runs().size());
        worst = lateness(line, other) > lateness(line, worst) ? other : worst;
      }
      return worst;
    }

    private long lateness(PressLine line, int at) {
      int run = line.runs().get(at).index();
      return (long) desk.evaluator().endOf(run)
          - problem.orders()[problem.runs()[run].order()].dueAt();
    }

    private RunSpec spec(PressLine line, int at) {
      return problem.runs()[line.runs().get(at).index()];
    }

    /** A place on the target at about the run's time, sometimes beside a kindred run. */
    private int near(PressLine target, PressLine line, int at) {
      List<RunCard> runs = target.runs();
      if (runs.isEmpty()) {
        return 0;
      }
      int run = line.runs().get(at).index();
      int time = desk.evaluator().endOf(run);
      int low = 0;
      int high = runs.size();
      while (low < high) {
        int middle = (low + high) >>> 1;
        if (desk.evaluator().endOf(runs.get(middle).index()) < time) {
          low = middle + 1;
        } else {
          high = middle;
        }
      }
      int kin = random.nextInt(4) == 0 ? kindred(target, run, low) : -1;
      if (kin >= 0) {
        return kin + random.nextInt(2);
      }
      int spread = 1 + (int) Math.abs(random.nextGaussian() * 4);
      int place = low + random.nextInt(2 * spread + 1) - spread - (random.nextInt(4) == 0 ? 3 : 0);
      return Math.max(0, Math.min(runs.size(), place));
    }

    /** Nearest run that shares screens or the first ink, so that the set-up gets short. */
    private int kindred(PressLine target, int run, int around) {
      RunSpec spec = problem.runs()[run];
      int best = -1;
      for (int distance = 0; distance < 25; distance++) {
        for (int place = around - distance; place <= around + distance; place += 2 * distance + 1) {
          if (place >= 0 && place < target.runs().size() && best < 0) {
            int other = target.runs().get(place).index();
            RunSpec otherSpec = problem.runs()[other];
            boolean sameInk =
                spec.inks().length > 0
                    && otherSpec.inks().length > 0
                    && spec.inks()[0] == otherSpec.inks()[0];
            if (other != run && (sameScreens(spec, otherSpec) || sameInk)) {
              best = place;
            }
          }
        }
      }
      return best;
    }

    private static boolean sameScreens(RunSpec one, RunSpec other) {
      return one.screenSet() >= 0 && one.screenSet() == other.screenSet();
    }

    private RunsMove withinLine(PressLine line, int at, int near, int kind) {
      int place = Math.min(near, line.runs().size() - 1);
      if (place == at) {
        return null;
      }
      return kind < 6 ? RunsMove.within(line, at, place) : RunsMove.swapWithin(line, at, place);
    }

    private RunsMove swap(PressLine a, int atA, int lengthA, PressLine b, int atB, int lengthB) {
      int toA = Math.min(atA + lengthA, a.runs().size());
      int toB = Math.min(atB + lengthB, b.runs().size());
      if (atB > toB || (lengthB > 0 && atB == toB)) {
        return null;
      }
      for (int i = atA; i < toA; i++) {
        if (!spec(a, i).presses()[b.press()]) {
          return null;
        }
      }
      for (int i = atB; i < toB; i++) {
        if (!spec(b, i).presses()[a.press()]) {
          return null;
        }
      }
      return RunsMove.between(a, atA, toA, b, atB, toB);
    }
  }
}
