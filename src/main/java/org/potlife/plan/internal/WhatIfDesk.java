package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.potlife.plan.PlanWish;
import org.potlife.plan.internal.PlantNow.Stand;
import org.potlife.plan.list.ChangeList;
import org.potlife.plan.list.PlanIndex;
import org.potlife.planning.PlanRequest;
import org.potlife.planning.Planner;
import org.potlife.planning.WhatIf;
import org.potlife.planning.WhatIf.Answer;
import org.potlife.platform.problem.FieldError;
import org.potlife.platform.problem.ProblemException;
import org.potlife.sheet.PlanSheet;
import org.potlife.shop.ShopCheck;

/** Answers questions to the plan in force. Nothing is stored. */
@ApplicationScoped
class WhatIfDesk {

  private final PlantNow plants;
  private final Planner planner;
  private final QuestionTurn turn;

  @Inject
  WhatIfDesk(PlantNow plants, Planner planner, QuestionTurn turn) {
    this.plants = plants;
    this.planner = planner;
    this.turn = turn;
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
    return turn.answer(
        plant, () -> answer(stand, under, WhatIf.of(planner, request, asked.question())));
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
