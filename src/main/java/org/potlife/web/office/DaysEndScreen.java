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
import org.potlife.closeout.CloseOuts;
import org.potlife.order.PromiseLookup;
import org.potlife.platform.access.Roles;
import org.potlife.room.InkBook;
import org.potlife.room.InkContainer;
import org.potlife.shop.Shops;
import org.potlife.web.shell.Job;
import org.potlife.web.shell.Screens;
import org.potlife.web.shell.Shell;

/** How a day went: plan against actual, promises, ink, and what is left to be done. */
@Path("/plants/{plant}/days-end")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed(Roles.VIEWER)
public class DaysEndScreen {

  private final Screens screens;
  private final CloseOuts closeOuts;
  private final PromiseLookup promises;
  private final Shops shops;
  private final InkBook book;

  @Inject
  DaysEndScreen(
      Screens screens, CloseOuts closeOuts, PromiseLookup promises, Shops shops, InkBook book) {
    this.screens = screens;
    this.closeOuts = closeOuts;
    this.promises = promises;
    this.shops = shops;
    this.book = book;
  }

  /**
   * The close-out of a day.
   *
   * @param day 2026-12-01; today without it
   * @param all whether all presses, orders and inks are shown, however many there are
   */
  @GET
  @Operation(hidden = true)
  public Response day(
      @PathParam("plant") String plant,
      @QueryParam("day") String day,
      @QueryParam("all") boolean all) {
    return screens.show(
        plant,
        Job.DAYS_END,
        shell -> {
          LocalDate local = Screens.day(day, shell.today());
          return OfficeScreens.daysEnd(
              shell, report(shell, local, all), ink(shell, local), shell.times(local));
        });
  }

  private DayReport report(Shell shell, LocalDate day, boolean all) {
    return new DayReport(
        closeOuts.closeOut(shell.plant(), day),
        DayReport.Stage.of(day, shell.today()),
        shops.getShop(shell.plant()).shop(),
        promises.listPromises(shell.plant()),
        all);
  }

  private DayInk ink(Shell shell, LocalDate day) {
    List<InkContainer> all =
        book.listBatches(shell.plant(), day.atStartOfDay(shell.zone()).toInstant()).stream()
            .filter(batch -> LocalDate.ofInstant(batch.since(), shell.zone()).equals(day))
            .sorted(Comparator.comparing(InkContainer::container))
            .toList();
    return new DayInk(
        day,
        all.stream().filter(batch -> batch.goneAt() == null).toList(),
        all.stream().filter(batch -> batch.goneAt() != null).toList());
  }
}
