package org.potlife.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.potlife.screen.FrameStock;
import org.potlife.screen.ScreenRoom;

/**
 * Part of R8: never more frames of a mesh in use than owned. A made screen holds its frame from the
 * start of degreasing until its set is taken down after its last run and reclaimed, screen after
 * screen; kept stencils hold theirs all the time.
 */
final class FrameBook {

  private final Evidence evidence;
  private final ScreenRoom room;

  FrameBook(Evidence evidence) {
    this.evidence = evidence;
    this.room = evidence.shop().screenRoom();
  }

  void check(Notes notes) {
    evidence.screens().stream()
        .filter(screen -> !screen.kept())
        .map(ScreenFacts::key)
        .map(key -> List.of(key.meshPerCm(), key.threadUm()))
        .distinct()
        .forEach(mesh -> check(mesh.get(0), mesh.get(1), notes));
  }

  private record Change(long at, int frames, String screen) {}

  private void check(double mesh, double thread, Notes notes) {
    int owned =
        room.frames().stream()
            .filter(stock -> stock.meshPerCm() == mesh && stock.threadUm() == thread)
            .mapToInt(FrameStock::count)
            .sum();
    int held =
        (int)
            room.kept().stream()
                .filter(kept -> kept.meshPerCm() == mesh && kept.threadUm() == thread)
                .count();
    List<Change> changes = new ArrayList<>();
    for (ScreenFacts screen : evidence.screens()) {
      if (!screen.kept() && screen.key().sameFrame(mesh, thread) && !screen.steps().isEmpty()) {
        changes.add(new Change(takenAt(screen), 1, screen.id()));
        changes.add(new Change(backAt(screen), -1, screen.id()));
      }
    }
    // a frame that comes back serves another screen in the same second
    changes.sort(Comparator.comparingLong(Change::at).thenComparingInt(Change::frames));
    for (Change change : changes) {
      held += change.frames();
      if (change.frames() > 0 && !(evidence.floor().hasReport() && isAsItWas(change.screen()))) {
        notes.check(
            held <= owned,
            change.screen(),
            "takes frame no. %d of mesh %.0f-%.0f at %s, the plant has %d",
            held,
            mesh,
            thread,
            evidence.at(change.at()),
            owned);
      }
    }
  }

  /** Whether it is begun or published for a run that stays: its frame was planned before. */
  private boolean isAsItWas(String screen) {
    return evidence.isBegun(screen)
        || evidence
            .screen(screen)
            .filter(s -> s.runs().stream().anyMatch(run -> evidence.isFrozen(run.id())))
            .isPresent();
  }

  private static long takenAt(ScreenFacts screen) {
    return screen.steps().stream().mapToLong(ScreenFacts.Step::from).min().orElse(0);
  }

  private long backAt(ScreenFacts screen) {
    long off = screen.steps().stream().mapToLong(ScreenFacts.Step::to).max().orElse(0);
    int set = 1;
    for (RunFacts run : screen.runs()) {
      off = Math.max(off, R4ScreensReady.releasedAt(run));
      set = run.print().colours().size();
    }
    return off + Math.round(60 * room.stages().reclaim() * set);
  }
}
