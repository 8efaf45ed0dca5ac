package org.potlife.web;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.potlife.plan.list.ActivationList;
import org.potlife.plan.list.ActivationList.Batch;
import org.potlife.plan.list.BatchSheet;
import org.potlife.platform.access.Roles;
import org.potlife.room.InkBook;

/** What belongs to one bucket of ink: its page and its label. */
@Path("/plants/{plant}/plans/{id}/pages")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed(Roles.VIEWER)
public class BatchPages {

  private final SheetDesk desk;
  private final InkBook book;

  @Inject
  BatchPages(SheetDesk desk, InkBook book) {
    this.desk = desk;
    this.book = book;
  }

  @GET
  @Path("batches/{batch: .+}")
  @Operation(hidden = true)
  public Response batch(
      @PathParam("plant") String plant,
      @PathParam("id") String id,
      @PathParam("batch") String batch,
      @Context UriInfo uri) {
    return desk.pageOfOne(
        plant,
        id,
        (head, plan) ->
            BatchSheet.find(plan, batch)
                .map(
                    sheet -> {
                      PageHead day = head.on(plan.dayOf(sheet.batch().readyAt()));
                      return Pages.batch(
                          day,
                          new WallTime(plan.zone(), day.day()),
                          sheet,
                          book.find(plant, sheet.batch().id()).orElse(null),
                          BatchLabel.of(sheet.batch(), head, uri.getBaseUri()));
                    }));
  }

  /**
   * Labels of a day's batches, or of one batch.
   *
   * @param size {@code label} for a label printer, one to a page; else A4 sheets to be cut
   */
  @GET
  @Path("labels")
  @Operation(hidden = true)
  public Response labels(
      @PathParam("plant") String plant,
      @PathParam("id") String id,
      @QueryParam("day") String day,
      @QueryParam("batch") String batch,
      @QueryParam("size") String size,
      @Context UriInfo uri) {
    return desk.page(
        plant,
        id,
        day,
        (head, time, plan) -> {
          List<Batch> batches =
              batch == null
                  ? ActivationList.of(plan, head.day()).batches()
                  : BatchSheet.find(plan, batch).map(BatchSheet::batch).stream().toList();
          PageHead own =
              batch == null || batches.isEmpty()
                  ? head
                  : head.on(plan.dayOf(batches.get(0).readyAt()));
          return Pages.labels(
              own,
              new WallTime(plan.zone(), own.day()),
              batches.stream().map(b -> BatchLabel.of(b, own, uri.getBaseUri())).toList(),
              "label".equals(size));
        });
  }
}
