package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;
import org.potlife.plan.PlanWish;
import org.potlife.plan.internal.PlantLock.Purpose;
import org.potlife.plan.internal.PlantNow.Stand;
import org.potlife.plan.list.ChangeList;
import org.potlife.plan.list.PlanIndex;
import org.potlife.planning.PlanRequest;
import org.potlife.planning.Planner;
import org.potlife.planning.WhatIf;
import org.potlife.planning.WhatIf.Answer;
import org.potlife.platform.problem.FieldError;
import org.potlife.platform.problem.ProblemException;
import org.potlife.platform.problem.ProblemType;
import org.potlife.sheet.PlanSheet;
import org.potlife.shop.ShopCheck;

/**
 * Answers questions to the plan in force, one of a plant at a time over all instances. Nothing is
 * stored, and a plan that is being solved goes on: it has a lock of its own.
 */
@ApplicationScoped
class WhatIfDesk {

  private final PlantNow plants;
  private final Planner planner;
  private final DataSource dataSource;

  @Inject
  WhatIfDesk(PlantNow plants, Planner planner, DataSource dataSource) {
    this.plants = plants;
    this.planner = planner;
    this.dataSource = dataSource;
  }

  /**
   * What would become of the plan in force.
   *
   * @throws ProblemException 404 without such a plant, 409 without a plan in force, 422 when the
   *     plant does not have what is asked about, 429 while another question is being answered
   */
  WhatIfAnswer answer(String plant, WhatIfBody asked) throws SQLException {
    Stand stand = plants.read(plant);
    PlanSheet inForce =
        stand
            .published()
            .orElseThrow(
                () ->
                    ProblemException.conflict(
                        "No plan is in force that could be asked. Publish one first."));
    refuse(asked.check(stand.basis().shop(), stand.basis().orders()));
    PlanRequest request =
        stand.request(stand.dayLike(inForce), asked.seconds(), PlanWish.DEFAULT_SEED);
    PlanRequest under = WhatIf.under(request, asked.question());
    refuse(
        ShopCheck.check(under.shop()).stream()
            .map(error -> new FieldError("/shift", error.detail()))
            .toList());
    Optional<PlantLock> turn = PlantLock.tryFor(dataSource, plant, Purpose.QUESTION);
    if (turn.isEmpty()) {
      throw new ProblemException(
          ProblemType.TOO_MANY_REQUESTS,
          "Another question to this plant's plan is being answered. Ask again in a moment.");
    }
    try {
      return answer(stand, under, WhatIf.of(planner, request, asked.question()));
    } finally {
      turn.get().close();
    }
  }

  private static WhatIfAnswer answer(Stand stand, PlanRequest under, Answer answer) {
    PlanIndex then =
        new PlanIndex(
            under.shop(), under.orders(), answer.plan(), under.ink(), under.rooms().climate());
    String inForce = stand.basis().published();
    return WhatIfAnswer.of(
        inForce,
        stand.stale(),
        answer,
        ChangeList.of(then, inForce, Optional.of(answer.inForce())));
  }

  private static void refuse(List<FieldError> errors) {
    if (!errors.isEmpty()) {
      throw ProblemException.invalid(errors);
    }
  }
}
