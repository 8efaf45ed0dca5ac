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
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.potlife.plan.list.ActivationList;
import org.potlife.plan.list.InkCautions;
import org.potlife.platform.access.Roles;
import org.potlife.room.InkBook;
import org.potlife.room.InkContainer;
import org.potlife.web.shell.Job;
import org.potlife.web.shell.Screens;
import org.potlife.web.shell.Shell;

/** The ink room's screen: what to weigh, when to activate, what must be gone. */
@Path("/plants/{plant}/ink-room")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed(Roles.VIEWER)
public class InkRoomScreen {

  /** Longer than any pot life. */
  private static final Duration FORGOTTEN = Duration.ofDays(4);

  private final Screens screens;
  private final RoomPlan plan;
  private final InkBook book;

  @Inject
  InkRoomScreen(Screens screens, RoomPlan plan, InkBook book) {
    this.screens = screens;
    this.plan = plan;
    this.book = book;
  }

  /**
   * The list of a day.
   *
   * @param planId id of the plan in force; null when there is none
   * @param open batches that something is to be done with, the most urgent first
   * @param gone batches that are emptied or discarded
   * @param overdue activated batches of any day whose pot life is over and that are still there
   * @param cautions what to keep in mind
   */
  public record Jobs(
      String planId,
      LocalDate day,
      List<InkJob> open,
      List<InkJob> gone,
      List<InkContainer> overdue,
      List<String> cautions) {

    public LocalDate dayBefore() {
      return day.minusDays(1);
    }

    public LocalDate dayAfter() {
      return day.plusDays(1);
    }
  }

  @GET
  @Operation(hidden = true)
  public Response room(@PathParam("plant") String plant, @QueryParam("day") String day) {
    return screens.show(
        plant,
        Job.INK_ROOM,
        shell -> {
          Jobs jobs = jobs(shell, day);
          return RoomScreens.inkRoom(shell, jobs, shell.times(jobs.day()));
        });
  }

  /** The list alone, for a screen that is open. */
  @GET
  @Path("list")
  @Operation(hidden = true)
  public Response list(@PathParam("plant") String plant, @QueryParam("day") String day) {
    return screens.show(
        plant,
        Job.INK_ROOM,
        shell -> {
          Jobs jobs = jobs(shell, day);
          return RoomScreens.inkRoom$list(shell, jobs, shell.times(jobs.day()));
        });
  }

  private Jobs jobs(Shell shell, String asked) {
    List<InkContainer> overdue = overdue(shell);
    return plan.find(shell, asked)
        .map(found -> jobs(shell, found, overdue))
        .orElseGet(
            () ->
                new Jobs(
                    null,
                    Screens.day(asked, shell.today()),
                    List.of(),
                    List.of(),
                    overdue,
                    overdue.isEmpty() ? List.of() : InkCautions.lines()));
  }

  private Jobs jobs(Shell shell, RoomPlan.Day found, List<InkContainer> overdue) {
    ActivationList list = ActivationList.of(found.plan(), found.day());
    List<InkJob> all =
        list.batches().stream()
            .map(
                batch ->
                    InkJob.of(
                        batch, book.find(shell.plant(), batch.id()).orElse(null), shell.now()))
            .sorted(Comparator.comparing(job -> job.dueAt().toInstant()))
            .toList();
    Set<String> late = overdue.stream().map(InkContainer::container).collect(Collectors.toSet());
    return new Jobs(
        found.id(),
        found.day(),
        all.stream()
            .filter(job -> job.state() != InkJob.State.GONE && !late.contains(job.batch().id()))
            .toList(),
        all.stream().filter(job -> job.state() == InkJob.State.GONE).toList(),
        overdue,
        overdue.isEmpty() ? list.cautions() : InkCautions.lines());
  }

  private List<InkContainer> overdue(Shell shell) {
    Instant now = shell.now();
    return book.listBatches(shell.plant(), now.minus(FORGOTTEN)).stream()
        .filter(batch -> batch.goneAt() == null)
        .filter(batch -> batch.useBy() != null && batch.useBy().isBefore(now))
        .sorted(Comparator.comparing(InkContainer::useBy))
        .toList();
  }
}
