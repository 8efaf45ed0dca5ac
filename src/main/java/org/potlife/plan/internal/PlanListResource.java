package org.potlife.plan.internal;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.potlife.audit.AuditReport;
import org.potlife.plan.PlanBasis;
import org.potlife.plan.Plans;
import org.potlife.plan.StoredPlan;
import org.potlife.plan.export.ActivationCsv;
import org.potlife.plan.export.AuditCsv;
import org.potlife.plan.export.BeltCsv;
import org.potlife.plan.export.ChangeCsv;
import org.potlife.plan.export.LateCsv;
import org.potlife.plan.export.PressCsv;
import org.potlife.plan.export.PromiseCsv;
import org.potlife.plan.export.ScreenCsv;
import org.potlife.plan.list.ActivationList;
import org.potlife.plan.list.BeltList;
import org.potlife.plan.list.ChangeList;
import org.potlife.plan.list.LateList;
import org.potlife.plan.list.PlanDrawing;
import org.potlife.plan.list.PlanIndex;
import org.potlife.plan.list.PlanOverview;
import org.potlife.plan.list.PressList;
import org.potlife.plan.list.ScreenList;
import org.potlife.platform.access.Roles;
import org.potlife.platform.problem.ProblemException;
import org.potlife.platform.problem.Years;

/**
 * The lists of a plan, as JSON or CSV by {@code Accept} or {@code ?format=}; {@code ?day=} asks for
 * another day than the plan's.
 */
@Path("/api/v1/plants/{plant}/plans/{id}")
@Tag(name = "lists", description = "What each room reads; JSON, or CSV by Accept or ?format=csv")
@Produces({MediaType.APPLICATION_JSON, PlanListResource.CSV})
@RolesAllowed(Roles.VIEWER)
public class PlanListResource {

  static final String CSV = "text/csv";

  private static final MediaType CSV_TYPE = MediaType.valueOf(CSV);
  private static final MediaType CSV_TEXT = CSV_TYPE.withCharset("utf-8");

  private final Plans plans;

  @Inject
  PlanListResource(Plans plans) {
    this.plans = plans;
  }

  @GET
  @Path("activations")
  @Operation(summary = "The ink room's list of a day: what to weigh, when to activate, until when")
  @APIResponse(
      responseCode = "200",
      content = @Content(schema = @Schema(implementation = ActivationList.class)))
  public Response activations(
      @PathParam("plant") String plant,
      @PathParam("id") String id,
      @QueryParam("day") String day,
      @QueryParam("format") String format,
      @Context HttpHeaders headers) {
    return ofDay(plant, id, day, format, headers)
        .answer("activations", ActivationList::of, ActivationCsv::of);
  }

  @GET
  @Path("screens")
  @Operation(summary = "The screen room's list of a day: stages, cabinet loads, kept stencils")
  @APIResponse(
      responseCode = "200",
      content = @Content(schema = @Schema(implementation = ScreenList.class)))
  public Response screens(
      @PathParam("plant") String plant,
      @PathParam("id") String id,
      @QueryParam("day") String day,
      @QueryParam("format") String format,
      @Context HttpHeaders headers) {
    return ofDay(plant, id, day, format, headers).answer("screens", ScreenList::of, ScreenCsv::of);
  }

  @GET
  @Path("presses")
  @Operation(summary = "The press crews' list of a day: a card for each run")
  @APIResponse(
      responseCode = "200",
      content = @Content(schema = @Schema(implementation = PressList.class)))
  public Response presses(
      @PathParam("plant") String plant,
      @PathParam("id") String id,
      @QueryParam("day") String day,
      @QueryParam("format") String format,
      @Context HttpHeaders headers) {
    return ofDay(plant, id, day, format, headers).answer("presses", PressList::of, PressCsv::of);
  }

  @GET
  @Path("belts")
  @Operation(summary = "The belts' timetable of a day")
  @APIResponse(
      responseCode = "200",
      content = @Content(schema = @Schema(implementation = BeltList.class)))
  public Response belts(
      @PathParam("plant") String plant,
      @PathParam("id") String id,
      @QueryParam("day") String day,
      @QueryParam("format") String format,
      @Context HttpHeaders headers) {
    return ofDay(plant, id, day, format, headers).answer("belts", BeltList::of, BeltCsv::of);
  }

  @GET
  @Path("late")
  @Operation(summary = "Late orders and prints without a place, with their causes")
  @APIResponse(
      responseCode = "200",
      content = @Content(schema = @Schema(implementation = LateList.class)))
  @RolesAllowed({Roles.VIEWER, Roles.ERP})
  public Response late(
      @PathParam("plant") String plant,
      @PathParam("id") String id,
      @QueryParam("format") String format,
      @Context HttpHeaders headers) {
    return ofDay(plant, id, null, format, headers)
        .answer("late", (plan, day) -> LateList.of(plan), LateCsv::of);
  }

  @GET
  @Path("promises")
  @Operation(summary = "When each order on the plan is done, and the plan's days")
  @APIResponse(
      responseCode = "200",
      content = @Content(schema = @Schema(implementation = PlanOverview.class)))
  @RolesAllowed({Roles.VIEWER, Roles.ERP})
  public Response promises(
      @PathParam("plant") String plant,
      @PathParam("id") String id,
      @QueryParam("format") String format,
      @Context HttpHeaders headers) {
    return ofDay(plant, id, null, format, headers)
        .answer("promises", (plan, day) -> PlanOverview.of(plan), PromiseCsv::of);
  }

  @GET
  @Path("changes")
  @Operation(
      summary = "What the plan changes on the one that was in force when it was made",
      description = "Which runs move from where to where and why, whose promise changes.")
  @APIResponse(
      responseCode = "200",
      content = @Content(schema = @Schema(implementation = ChangeList.class)))
  public Response changes(
      @PathParam("plant") String plant,
      @PathParam("id") String id,
      @QueryParam("format") String format,
      @Context HttpHeaders headers) {
    StoredPlan plan = plans.getPlan(plant, id);
    PlanIndex index = plan.index().orElseThrow(() -> notStanding(plan));
    String against = plan.basis().map(PlanBasis::published).orElse(null);
    ChangeList changes =
        ChangeList.of(
            index,
            against,
            Optional.ofNullable(against).flatMap(before -> plans.getPlan(plant, before).sheet()));
    return wantsCsv(format, headers)
        ? file("changes-" + plan.summary().id(), ChangeCsv.of(changes))
        : Response.ok(
                ListAnswer.of(plan.summary(), index.zone().getId(), changes),
                MediaType.APPLICATION_JSON_TYPE)
            .build();
  }

  @GET
  @Path("drawing")
  @Operation(summary = "The whole plan as it is drawn: presses, belts, batches and drying loads")
  @APIResponse(
      responseCode = "200",
      content = @Content(schema = @Schema(implementation = PlanDrawing.class)))
  public Response drawing(@PathParam("plant") String plant, @PathParam("id") String id) {
    StoredPlan plan = plans.getPlan(plant, id);
    PlanIndex index = plan.index().orElseThrow(() -> notStanding(plan));
    return Response.ok(
            ListAnswer.of(plan.summary(), index.zone().getId(), PlanDrawing.of(index)),
            MediaType.APPLICATION_JSON_TYPE)
        .build();
  }

  @GET
  @Path("audit")
  @Operation(summary = "Every rule, checked how often, broken where")
  @APIResponse(
      responseCode = "200",
      content = @Content(schema = @Schema(implementation = AuditAnswer.class)))
  public Response audit(
      @PathParam("plant") String plant,
      @PathParam("id") String id,
      @QueryParam("format") String format,
      @Context HttpHeaders headers) {
    StoredPlan plan = plans.getPlan(plant, id);
    AuditReport audit = plan.audit().orElseThrow(() -> notStanding(plan));
    return wantsCsv(format, headers)
        ? file("audit-" + plan.summary().id(), AuditCsv.of(audit))
        : Response.ok(AuditAnswer.of(plan.summary(), audit), MediaType.APPLICATION_JSON_TYPE)
            .build();
  }

  private Asked ofDay(String plant, String id, String day, String format, HttpHeaders headers) {
    StoredPlan plan = plans.getPlan(plant, id);
    PlanIndex index = plan.index().orElseThrow(() -> notStanding(plan));
    return new Asked(plan, index, day(day, plan), wantsCsv(format, headers));
  }

  /** One list that is asked for. */
  private record Asked(StoredPlan plan, PlanIndex index, LocalDate day, boolean csv) {

    <T> Response answer(
        String name, BiFunction<PlanIndex, LocalDate, T> make, Function<T, String> csvOf) {
      T list = make.apply(index, day);
      return csv
          ? file(name + "-" + day, csvOf.apply(list))
          : Response.ok(
                  ListAnswer.of(plan.summary(), index.zone().getId(), list),
                  MediaType.APPLICATION_JSON_TYPE)
              .build();
    }
  }

  private static Response file(String name, String csv) {
    return Response.ok(csv, CSV_TEXT)
        .header("Content-Disposition", "attachment; filename=\"" + name + ".csv\"")
        .build();
  }

  private static LocalDate day(String day, StoredPlan plan) {
    return day == null ? plan.summary().day() : Years.day("day", day);
  }

  private static boolean wantsCsv(String format, HttpHeaders headers) {
    if (format != null) {
      return switch (format) {
        case "csv" -> true;
        case "json" -> false;
        default -> throw ProblemException.badRequest("format must be json or csv.");
      };
    }
    // in the order of the client's liking
    for (MediaType type : headers.getAcceptableMediaTypes()) {
      if (type.isCompatible(MediaType.APPLICATION_JSON_TYPE)) {
        return false;
      }
      if (type.isCompatible(CSV_TYPE)) {
        return true;
      }
    }
    return false;
  }

  private static ProblemException notStanding(StoredPlan plan) {
    return ProblemException.conflict(
        "The plan has no lists: it is " + plan.summary().state().word() + ".");
  }
}
