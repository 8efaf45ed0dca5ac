package org.potlife.web.room;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Optional;
import org.potlife.plan.Plans;
import org.potlife.plan.StoredPlan;
import org.potlife.plan.list.PlanIndex;
import org.potlife.web.shell.Screens;
import org.potlife.web.shell.Shell;

/** The plan in force, as a room reads it. */
@ApplicationScoped
class RoomPlan {

  private final Plans plans;

  @Inject
  RoomPlan(Plans plans) {
    this.plans = plans;
  }

  /**
   * A day of the plan in force.
   *
   * @param id of the plan
   */
  record Day(String id, PlanIndex plan, LocalDate day) {}

  /**
   * The day that is asked for, else today, or the plan's first day when that is still to come.
   *
   * @return empty when no plan is in force
   */
  Optional<Day> find(Shell shell, String asked) {
    return plans
        .findCurrent(shell.plant())
        .flatMap(plan -> plan.index().map(index -> day(shell, asked, plan, index)));
  }

  private static Day day(Shell shell, String asked, StoredPlan plan, PlanIndex index) {
    LocalDate first = plan.summary().day();
    LocalDate likeliest = shell.today().isBefore(first) ? first : shell.today();
    return new Day(plan.summary().id(), index, Screens.day(asked, likeliest));
  }
}
