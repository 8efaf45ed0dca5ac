package org.potlife.web.plan;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.potlife.plan.PlanBasis;
import org.potlife.plan.PlanState;
import org.potlife.plan.PlanSummary;
import org.potlife.plan.Plans;
import org.potlife.plan.StoredPlan;
import org.potlife.plan.list.ChangeList;
import org.potlife.plan.list.LateList;
import org.potlife.plan.list.PlanDrawing;
import org.potlife.plan.list.PlanIndex;
import org.potlife.platform.access.Roles;
import org.potlife.sheet.PlanSheet;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;
import org.potlife.web.shell.Job;
import org.potlife.web.shell.Screens;
import org.potlife.web.shell.Shell;

/** The planner's screen of a plant. */
@Path("/plants/{plant}/plan")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed(Roles.VIEWER)
public class PlanScreen {

  /** How many plans there are to choose from. */
  private static final int RECENT = 20;

  private final Screens screens;
  private final Shops shops;
  private final Plans plans;

  @Inject
  PlanScreen(Screens screens, Shops shops, Plans plans) {
    this.screens = screens;
    this.shops = shops;
    this.plans = plans;
  }

  /**
   * A plan.
   *
   * @param plan its id; without it the newest draft, else the plan in force
   * @param day the day to open the drawing at
   */
  @GET
  @Operation(hidden = true)
  public Response plan(
      @PathParam("plant") String plant,
      @QueryParam("plan") String plan,
      @QueryParam("day") String day) {
    return screens.show(
        plant,
        Job.PLAN,
        shell -> {
          PlanDesk desk = desk(shell, plan, day);
          return PlanScreens.plan(shell, desk, shell.times(desk.day()));
        });
  }

  private PlanDesk desk(Shell shell, String asked, String day) {
    Shop shop = shops.getShop(shell.plant()).shop();
    List<PlanSummary> recent = plans.listPlans(shell.plant(), RECENT);
    Optional<StoredPlan> found =
        asked == null || asked.isBlank()
            ? likeliest(shell.plant(), recent)
            : Optional.of(plans.getPlan(shell.plant(), asked));
    LocalDate tomorrow = shell.today().plusDays(1);
    PlanSummary summary = found.map(StoredPlan::summary).orElse(null);
    Optional<PlanIndex> index = found.flatMap(StoredPlan::index);
    String against = found.flatMap(StoredPlan::basis).map(PlanBasis::published).orElse(null);
    Optional<PlanSheet> before =
        Optional.ofNullable(against).flatMap(id -> plans.getPlan(shell.plant(), id).sheet());
    return new PlanDesk(
        summary,
        recent,
        shop.currency(),
        tomorrow,
        shop.settings().longestSolveSeconds(),
        Screens.day(day, summary == null ? tomorrow : summary.day()),
        index.map(PlanDrawing::of).orElse(null),
        index.map(LateList::of).orElse(null),
        index
            .filter(plan -> before.isPresent())
            .map(plan -> ChangeList.of(plan, against, before))
            .orElse(null),
        before.map(PlanSheet::score).orElse(null));
  }

  private Optional<StoredPlan> likeliest(String plant, List<PlanSummary> recent) {
    return recent.stream()
        .findFirst()
        .filter(p -> p.state() == PlanState.DRAFT || p.state() == PlanState.SOLVING)
        .map(p -> plans.getPlan(plant, p.id()))
        .or(() -> plans.findCurrent(plant));
  }
}
