package org.potlife.plan;

import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Alternative;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.potlife.planning.PlanRequest;
import org.potlife.planning.Planner;
import org.potlife.planning.SolveWatch;
import org.potlife.planning.SolveWatch.Progress;
import org.potlife.sheet.PlanSheet;

/**
 * A planner for tests of everything around it: it "searches" a twentieth of the time that is asked
 * for, improves all along, and always finds the plan written by hand. With the seed {@link
 * #UNLUCKY} it fails.
 */
@Alternative
@Priority(1)
@ApplicationScoped
public class ScriptedPlanner implements Planner {

  public static final long UNLUCKY = 13;

  private static final long STEP_MS = 50;

  private final Map<String, AtomicInteger> running = new ConcurrentHashMap<>();
  private final AtomicInteger sideBySide = new AtomicInteger();
  private final AtomicInteger warm = new AtomicInteger();

  /** How many searches began with a plan that was found before. */
  public int warmStarts() {
    return warm.get();
  }

  /** How many searches for one shop ran at the same time, at most. */
  public int mostAtATime() {
    return sideBySide.get();
  }

  @Override
  public PlanSheet solve(PlanRequest request, SolveWatch watch) {
    if (request.seed() == UNLUCKY) {
      throw new IllegalStateException("nothing fits anywhere");
    }
    AtomicInteger here = running.computeIfAbsent(request.shop().name(), n -> new AtomicInteger());
    sideBySide.accumulateAndGet(here.incrementAndGet(), Math::max);
    try {
      long steps = request.solveSeconds();
      for (long step = 0; step < steps && !watch.stopRequested(); step++) {
        watch.improved(new Progress(step * STEP_MS, 1, 1000 - step, 500 - step));
        Thread.sleep(STEP_MS);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      here.decrementAndGet();
    }
    return SheetFixture.sheet();
  }

  @Override
  public PlanSheet solve(PlanRequest request, Optional<PlanSheet> found, SolveWatch watch) {
    found.ifPresent(sheet -> warm.incrementAndGet());
    return solve(request, watch);
  }

  @Override
  public PlanSheet keeping(PlanRequest request, PlanSheet other) {
    return SheetFixture.sheet();
  }

  @Override
  public PlanSheet earliestDueDate(PlanRequest request) {
    return SheetFixture.sheet();
  }
}
