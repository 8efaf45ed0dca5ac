package org.potlife.plan.internal;

import java.time.OffsetDateTime;
import java.util.List;
import org.potlife.plan.list.ChangeList;
import org.potlife.planning.WhatIf;
import org.potlife.planning.WhatIf.OrderChange;

/**
 * What would become of the plan in force.
 *
 * @param plan id of the plan in force
 * @param stale whether set-up or orders have changed since that plan was made: what they change is
 *     in both figures
 * @param plannedAt the moment from which is counted
 * @param frozen runs that have begun or are about to, and stay whatever is asked
 * @param now the plan in force as it stands at this moment, without search
 * @param then the plan under the change
 * @param becomeLate orders on time now and late then
 * @param becomeOnTime orders late now and on time then
 * @param losePlace orders with a print that has no place then, but has one now
 * @param findPlace orders with a print that has no place now, but has one then
 * @param orders every order whose lateness differs
 * @param changes what the plan under the change changes on the one in force
 */
record WhatIfAnswer(
    String plan,
    boolean stale,
    OffsetDateTime plannedAt,
    int frozen,
    Worth now,
    Worth then,
    List<String> becomeLate,
    List<String> becomeOnTime,
    List<String> losePlace,
    List<String> findPlace,
    List<OrderChange> orders,
    ChangeList changes) {

  /**
   * What a plan is worth.
   *
   * @param unplaced prints without a place
   * @param weightedLateMinutes late minutes times the weight of the order's priority, summed
   * @param cost total cost, plant currency
   */
  record Worth(int unplaced, long weightedLateMinutes, double cost) {}

  static WhatIfAnswer of(String plan, boolean stale, WhatIf.Answer answer, ChangeList changes) {
    return new WhatIfAnswer(
        plan,
        stale,
        answer.plan().plannedAt(),
        answer.plan().frozen().size(),
        new Worth(answer.unplacedNow(), answer.weightedLateMinutesNow(), answer.costNow()),
        new Worth(answer.unplacedThen(), answer.weightedLateMinutesThen(), answer.costThen()),
        answer.becomeLate(),
        answer.becomeOnTime(),
        answer.losePlace(),
        answer.findPlace(),
        answer.changes(),
        changes);
  }
}
