package org.potlife.room.internal;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.potlife.ink.LearnedGrams;
import org.potlife.platform.access.Roles;
import org.potlife.platform.problem.ProblemException;
import org.potlife.platform.problem.Years;
import org.potlife.room.InkBook;
import org.potlife.room.InkContainer;
import org.potlife.shop.Shops;

/** Reads the ink room's book. It is written by shop events alone. */
@Path("/api/v1/plants/{plant}/ink")
@Tag(name = "ink", description = "The ink room's book: the fate of every gram")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed(Roles.VIEWER)
public class InkBookResource {

  private static final Duration A_WEEK = Duration.ofDays(7);

  private final InkBook book;
  private final Shops shops;
  private final Clock clock;

  @Inject
  InkBookResource(InkBook book, Shops shops, Clock clock) {
    this.book = book;
    this.shops = shops;
    this.clock = clock;
  }

  /** Batches, the newest first. */
  public record Batches(List<InkContainer> batches) {}

  /** Containers on the shelf, the oldest first. */
  public record Stock(List<InkContainer> containers) {}

  /**
   * Grams per piece that closed runs have taught.
   *
   * @param smoothing share of its error by which a close-out moves a figure
   */
  public record Learned(double smoothing, List<LearnedGrams> learned) {}

  @GET
  @Path("batches")
  @Operation(summary = "Batches with the fate of their grams, of the last week or since= a moment")
  public Batches batches(@PathParam("plant") String plant, @QueryParam("since") String since) {
    shops.getShop(plant);
    return new Batches(book.listBatches(plant, since(since)));
  }

  @GET
  @Path("batches/{batch: .+}")
  @Operation(summary = "One batch or container, from the first mark to the last")
  public InkContainer batch(@PathParam("plant") String plant, @PathParam("batch") String batch) {
    shops.getShop(plant);
    return book.find(plant, batch)
        .orElseThrow(
            () ->
                ProblemException.notFound(
                    "Nothing was told of a batch or container of this name yet."));
  }

  @GET
  @Path("stock")
  @Operation(summary = "Containers on the shelf: what the next plan draws from first")
  public Stock stock(@PathParam("plant") String plant) {
    shops.getShop(plant);
    return new Stock(book.listStock(plant));
  }

  @GET
  @Path("learned")
  @Operation(summary = "Grams per piece that closed runs have taught, with their number")
  public Learned learned(@PathParam("plant") String plant) {
    shops.getShop(plant);
    return new Learned(LearnedGrams.SMOOTHING, book.listLearned(plant));
  }

  private Instant since(String since) {
    if (since == null) {
      return clock.instant().minus(A_WEEK);
    }
    return Years.moment("since", since);
  }
}
