package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.concurrent.Semaphore;
import org.potlife.plan.PlanWish;
import org.potlife.planning.Instructions;
import org.potlife.planning.PlanRequest;
import org.potlife.planning.Planner;
import org.potlife.planning.SolveWatch;
import org.potlife.platform.problem.ProblemException;

/** Tries instructions out: plans with them and without, and keeps nothing. */
@ApplicationScoped
class InstructionTrial {

  /** Search time of each of the two plans, seconds. */
  private static final int SECONDS = 1;

  /** Trials at once in this process; each needs a processor for some seconds. */
  private final Semaphore turns = new Semaphore(1);

  private final PlantNow plants;
  private final Planner planner;

  @Inject
  InstructionTrial(PlantNow plants, Planner planner) {
    this.plants = plants;
    this.planner = planner;
  }

  /**
   * What the instructions would do.
   *
   * @throws ProblemException 404 when there is no such plant, 409 while another trial runs
   */
  InstructionEffect effect(String plant, Instructions wanted) {
    if (!turns.tryAcquire()) {
      throw ProblemException.conflict("Another trial is running. Ask again in some seconds.");
    }
    try {
      PlanRequest present = request(plant);
      return InstructionEffect.of(
          planner.solve(present, SolveWatch.none()),
          planner.solve(present.under(wanted), SolveWatch.none()));
    } finally {
      turns.release();
    }
  }

  private PlanRequest request(String plant) {
    PlantNow.Stand stand = plants.read(plant);
    LocalDate day = stand.published().map(stand::dayLike).orElseGet(stand::today);
    return stand.request(day, SECONDS, PlanWish.DEFAULT_SEED);
  }
}
