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
import java.util.ArrayList;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.potlife.plan.list.ScreenList.Frame;
import org.potlife.platform.access.Roles;
import org.potlife.room.ClimateReading;
import org.potlife.room.ScreenBook;
import org.potlife.screen.Cabinet;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;
import org.potlife.web.shell.Job;
import org.potlife.web.shell.Screens;
import org.potlife.web.shell.Shell;

/** The screen room's screen: stages, cabinet loads, the air. */
@Path("/plants/{plant}/screen-room")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed(Roles.VIEWER)
public class ScreenRoomScreen {

  /** How many jobs a list shows until somebody asks for all. */
  private static final int AT_ONCE = 40;

  private final Screens screens;
  private final Shops shops;
  private final RoomPlan plan;
  private final ScreenBook book;

  @Inject
  ScreenRoomScreen(Screens screens, Shops shops, RoomPlan plan, ScreenBook book) {
    this.screens = screens;
    this.shops = shops;
    this.plan = plan;
    this.book = book;
  }

  /**
   * The list of a day.
   *
   * @param planId id of the plan in force; null when there is none
   * @param stage the stage that is shown alone; empty for all
   * @param stages stages of the day
   * @param open what is to be done, in working order
   * @param further how much is to be done after that
   * @param done what is reported to be done
   * @param frames screens of the day
   * @param places where the air is read
   * @param limitPercent humidity above which the emulsion does not dry
   */
  public record Jobs(
      String planId,
      LocalDate day,
      String stage,
      List<String> stages,
      List<ScreenJob> open,
      int further,
      List<ScreenJob> done,
      List<Frame> frames,
      List<String> places,
      double limitPercent) {

    public LocalDate dayBefore() {
      return day.minusDays(1);
    }

    public LocalDate dayAfter() {
      return day.plusDays(1);
    }
  }

  @GET
  @Operation(hidden = true)
  public Response room(
      @PathParam("plant") String plant,
      @QueryParam("day") String day,
      @QueryParam("stage") String stage,
      @QueryParam("whole") boolean whole) {
    return screens.show(
        plant,
        Job.SCREEN_ROOM,
        shell -> {
          Jobs jobs = jobs(shell, day, stage, whole);
          return RoomScreens.screenRoom(shell, jobs, shell.times(jobs.day()));
        });
  }

  /** The list alone, for a screen that is open. */
  @GET
  @Path("list")
  @Operation(hidden = true)
  public Response list(
      @PathParam("plant") String plant,
      @QueryParam("day") String day,
      @QueryParam("stage") String stage,
      @QueryParam("whole") boolean whole) {
    return screens.show(
        plant,
        Job.SCREEN_ROOM,
        shell -> {
          Jobs jobs = jobs(shell, day, stage, whole);
          return RoomScreens.screenRoom$list(shell, jobs, shell.times(jobs.day()));
        });
  }

  private Jobs jobs(Shell shell, String asked, String stage, boolean whole) {
    Shop shop = shops.getShop(shell.plant()).shop();
    List<String> places =
        new ArrayList<>(shop.screenRoom().cabinets().stream().map(Cabinet::id).toList());
    places.add(ClimateReading.STORE);
    places.add(ClimateReading.SCREEN_ROOM);
    double limit = shop.screenRoom().emulsion().humidityLimitPercent();
    String only = stage == null ? "" : stage;
    RoomPlan.Day found = plan.find(shell, asked).orElse(null);
    if (found == null) {
      LocalDate day = Screens.day(asked, shell.today());
      return new Jobs(
          null, day, only, List.of(), List.of(), 0, List.of(), List.of(), places, limit);
    }
    ScreenJobs day =
        new ScreenJobs(found.plan(), found.day(), book.list(shell.plant(), shell.now()));
    List<ScreenJob> all = day.jobs();
    List<ScreenJob> shown =
        all.stream().filter(job -> only.isEmpty() || job.step().equals(only)).toList();
    List<ScreenJob> open = shown.stream().filter(job -> !job.done()).toList();
    int first = whole ? open.size() : Math.min(AT_ONCE, open.size());
    return new Jobs(
        found.id(),
        found.day(),
        only,
        all.stream().map(ScreenJob::step).distinct().toList(),
        open.subList(0, first),
        open.size() - first,
        shown.stream().filter(ScreenJob::done).toList(),
        day.frames(),
        places,
        limit);
  }
}
