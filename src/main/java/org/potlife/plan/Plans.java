package org.potlife.plan;

import java.util.List;
import java.util.Optional;
import org.potlife.platform.http.Preconditions;
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

  /** The plan in force in one line, without reading the plan itself. */
  Optional<PlanSummary> findCurrentSummary(String plant);

  /** The plan in force, if there is one. */
  Optional<StoredPlan> findCurrent(String plant);

  /**
   * The plan with this id, or the one in force for the id {@code current}.
   *
   * @throws ProblemException 404 when the plant has none
   */
  StoredPlan getPlan(String plant, String id);

  /**
   * How far a plan's search has come, without reading the plan itself.
   *
   * @throws ProblemException 404 when the plant has none
   */
  PlanProgress getProgress(String plant, String id);

  /** The plant's plans, the newest first, at most {@code limit}. */
  List<PlanSummary> listPlans(String plant, int limit);

  /**
   * Puts a draft into force in the place of the plan before, unless it is not a draft, stale, or
   * breaks a rule. It is audited again, against the plan that is in force now.
   *
   * @param preconditions what the asker last read of the plan
   * @throws ProblemException 404 when the plant has no such plan, 412 when it has changed since
   */
  Publication publish(String plant, String id, Preconditions preconditions);

  /** The same for one who has read nothing. */
  default Publication publish(String plant, String id) {
    return publish(plant, id, Preconditions.NONE);
  }

  /**
   * Brings an earlier plan back: as a further version, at once in force, in which its runs that
   * have not begun stand on their presses in their order again. What has begun since stays, new
   * orders are put in where they fit best. Refused when the plan is not superseded, when nothing of
   * it is still to be done, when a run of it cannot stand there any more, or when the audit finds a
   * broken rule.
   *
   * @param preconditions what the asker last read of the earlier plan
   * @return the new version, or the earlier plan when it is refused
   * @throws ProblemException 404 when the plant has no such plan, 412 when it has changed since
   */
  Publication restore(String plant, String id, Preconditions preconditions);

  /**
   * Ends the search; the best plan so far is kept. Stopping a plan that stands changes nothing.
   *
   * @throws ProblemException 404 when the plant has no such plan
   */
  StoredPlan stop(String plant, String id);
}
