package org.potlife.web.office;

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
import java.util.Comparator;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.potlife.plan.list.InkCautions;
import org.potlife.platform.access.Roles;
import org.potlife.room.InkBook;
import org.potlife.room.InkContainer;
import org.potlife.web.shell.Job;
import org.potlife.web.shell.Screens;
import org.potlife.web.shell.Shell;

/** What is left at the end of a day, and where its ink went. */
@Path("/plants/{plant}/days-end")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed(Roles.VIEWER)
public class DaysEndScreen {

  private final Screens screens;
  private final InkBook book;

  @Inject
  DaysEndScreen(Screens screens, InkBook book) {
    this.screens = screens;
    this.book = book;
  }

  /**
   * A day's ink.
   *
   * @param open batches of which something should be left
   * @param closed batches that are emptied or discarded
   */
  public record Ink(LocalDate day, List<InkContainer> open, List<InkContainer> closed) {

    /** What is to be kept in mind while some is left. */
    public String caution() {
      return InkCautions.PUT_ASIDE;
    }

    public LocalDate dayBefore() {
      return day.minusDays(1);
    }

    public LocalDate dayAfter() {
      return day.plusDays(1);
    }

    /** Grams weighed in and stirred in. */
    public int madeG() {
      return all().stream().mapToInt(c -> c.grams().mixedG() + c.grams().agentG()).sum();
    }

    public int printedG() {
      return all().stream().mapToInt(c -> c.grams().printedG()).sum();
    }

    public int screensG() {
      return all().stream().mapToInt(c -> c.grams().screensG()).sum();
    }

    public int returnedG() {
      return all().stream().mapToInt(c -> c.grams().returnedG()).sum();
    }

    public int discardedG() {
      return all().stream().mapToInt(c -> c.grams().discardedG()).sum();
    }

    public int lostG() {
      return all().stream().mapToInt(c -> c.grams().lostG()).sum();
    }

    public int leftG() {
      return open.stream().mapToInt(c -> c.grams().leftG()).sum();
    }

    private List<InkContainer> all() {
      return java.util.stream.Stream.concat(open.stream(), closed.stream()).toList();
    }
  }

  @GET
  @Operation(hidden = true)
  public Response day(@PathParam("plant") String plant, @QueryParam("day") String day) {
    return screens.show(
        plant,
        Job.DAYS_END,
        shell -> {
          Ink ink = ink(shell, Screens.day(day, shell.today()));
          return OfficeScreens.daysEnd(shell, ink, shell.times(ink.day()));
        });
  }

  private Ink ink(Shell shell, LocalDate day) {
    List<InkContainer> all =
        book.listBatches(shell.plant(), day.atStartOfDay(shell.zone()).toInstant()).stream()
            .filter(batch -> LocalDate.ofInstant(batch.since(), shell.zone()).equals(day))
            .sorted(Comparator.comparing(InkContainer::container))
            .toList();
    return new Ink(
        day,
        all.stream().filter(batch -> batch.goneAt() == null).toList(),
        all.stream().filter(batch -> batch.goneAt() != null).toList());
  }
}
