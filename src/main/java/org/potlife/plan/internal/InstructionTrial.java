package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.time.LocalDate;
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

  private final PlantNow plants;
  private final Planner planner;
  private final QuestionTurn turn;

  @Inject
  InstructionTrial(PlantNow plants, Planner planner, QuestionTurn turn) {
    this.plants = plants;
    this.planner = planner;
    this.turn = turn;
  }

  /**
   * What the instructions would do.
   *
   * @throws ProblemException 404 when there is no such plant, 429 while another question is being
   *     answered
   */
  InstructionEffect effect(String plant, Instructions wanted) throws SQLException {
    PlanRequest present = request(plant);
    return turn.answer(
        plant,
        () ->
            InstructionEffect.of(
                planner.solve(present, SolveWatch.none()),
                planner.solve(present.under(wanted), SolveWatch.none())));
  }

  private PlanRequest request(String plant) {
    PlantNow.Stand stand = plants.read(plant);
    LocalDate day = stand.published().map(stand::dayLike).orElseGet(stand::today);
    return stand.request(day, SECONDS, PlanWish.DEFAULT_SEED);
  }
}
