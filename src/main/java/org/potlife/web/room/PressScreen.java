package org.potlife.web.room;

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
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.potlife.floor.Floor;
import org.potlife.plan.list.PressList;
import org.potlife.plan.list.PressList.PressDay;
import org.potlife.platform.access.Roles;
import org.potlife.platform.problem.ProblemException;
import org.potlife.shop.Shops;
import org.potlife.web.shell.Job;
import org.potlife.web.shell.Screens;
import org.potlife.web.shell.Shell;

/** The press crews' screens: choose a press, then its runs in order. */
@Path("/plants/{plant}/presses")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed(Roles.VIEWER)
public class PressScreen {

  private final Screens screens;
  private final Shops shops;
  private final RoomPlan plan;
  private final Floor floor;

  @Inject
  PressScreen(Screens screens, Shops shops, RoomPlan plan, Floor floor) {
    this.screens = screens;
    this.shops = shops;
    this.plan = plan;
    this.floor = floor;
  }

  /**
   * The presses of a day.
   *
   * @param planId id of the plan in force; null when there is none
   * @param presses all of them, or the one that was chosen
   */
  public record Jobs(String planId, LocalDate day, List<PressDay> presses) {

    public LocalDate dayBefore() {
      return day.minusDays(1);
    }

    public LocalDate dayAfter() {
      return day.plusDays(1);
    }
  }

  @GET
  @Operation(hidden = true)
  public Response choose(@PathParam("plant") String plant, @QueryParam("day") String day) {
    return screens.show(
        plant,
        Job.PRESSES,
        shell -> {
          Jobs jobs = jobs(shell, day);
          return RoomScreens.presses(shell, jobs, shell.times(jobs.day()));
        });
  }

  @GET
  @Path("{press}")
  @Operation(hidden = true)
  public Response press(
      @PathParam("plant") String plant,
      @PathParam("press") String press,
      @QueryParam("day") String day) {
    return screens.show(
        plant,
        Job.PRESSES,
        shell -> {
          PressJobs jobs = ofOne(shell, press, day);
          return RoomScreens.press(shell, jobs, shell.times(jobs.day()));
        });
  }

  /** The list alone, for a screen that is open. */
  @GET
  @Path("{press}/list")
  @Operation(hidden = true)
  public Response list(
      @PathParam("plant") String plant,
      @PathParam("press") String press,
      @QueryParam("day") String day) {
    return screens.show(
        plant,
        Job.PRESSES,
        shell -> {
          PressJobs jobs = ofOne(shell, press, day);
          return RoomScreens.press$list(shell, jobs, shell.times(jobs.day()));
        });
  }

  private Jobs jobs(Shell shell, String asked) {
    return plan.find(shell, asked)
        .map(
            found ->
                new Jobs(
                    found.id(), found.day(), PressList.of(found.plan(), found.day()).presses()))
        .orElseGet(() -> new Jobs(null, Screens.day(asked, shell.today()), List.of()));
  }

  private PressJobs ofOne(Shell shell, String press, String asked) {
    if (shops.getShop(shell.plant()).shop().findPress(press).isEmpty()) {
      throw ProblemException.notFound("The plant has no press " + press + ".");
    }
    Jobs jobs = jobs(shell, asked);
    List<String> orders =
        jobs.presses().stream()
            .flatMap(day -> day.runs().stream())
            .map(card -> card.run().order())
            .distinct()
            .toList();
    return PressJobs.of(
        jobs, press, floor.reportAt(shell.plant(), orders, shell.now()), shell.now());
  }
}
