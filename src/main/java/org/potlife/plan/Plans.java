package org.potlife.plan;

import java.util.List;
import java.util.Optional;
import org.potlife.platform.problem.ProblemException;

/** The plants' plans. */
public interface Plans {

  /**
   * Asks for a plan; it is solved in the background.
   *
   * @throws ProblemException 404 when there is no such plant
   */
  StoredPlan request(String plant, PlanWish wish);

  /** The id of the plan in force, if there is one. */
  Optional<String> findCurrentId(String plant);

  /** The plan in force, if there is one. */
  Optional<StoredPlan> findCurrent(String plant);

  /**
   * The plan with this id, or the one in force for the id {@code current}.
   *
   * @throws ProblemException 404 when the plant has none
   */
  StoredPlan getPlan(String plant, String id);

  /** The plant's plans, the newest first, at most {@code limit}. */
  List<PlanSummary> listPlans(String plant, int limit);

  /**
   * Puts a draft into force in the place of the plan before, unless it is not a draft, stale, or
   * breaks a rule. It is audited again, against the plan that is in force now.
   *
   * @throws ProblemException 404 when the plant has no such plan
   */
  Publication publish(String plant, String id);

  /**
   * Ends the search; the best plan so far is kept. Stopping a plan that stands changes nothing.
   *
   * @throws ProblemException 404 when the plant has no such plan
   */
  StoredPlan stop(String plant, String id);
}
