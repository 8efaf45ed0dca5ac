package org.potlife.plan.internal;

import io.smallrye.common.annotation.Blocking;
import io.smallrye.mutiny.Multi;
import io.smallrye.mutiny.infrastructure.Infrastructure;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.sse.OutboundSseEvent;
import jakarta.ws.rs.sse.Sse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Semaphore;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.potlife.plan.PlanProgress;
import org.potlife.plan.PlanState;
import org.potlife.plan.Plans;
import org.potlife.planning.SolveWatch.Progress;
import org.potlife.platform.access.Roles;
import org.potlife.platform.problem.ProblemException;
import org.potlife.platform.problem.ProblemType;

/** The falling curve of a search, to be polled or watched. */
@Path("/api/v1/plants/{plant}/plans/{id}/progress")
@Tag(name = "plans")
@RolesAllowed({Roles.VIEWER, Roles.ERP})
public class ProgressResource {

  private static final Duration LOOK_EVERY = Duration.ofMillis(500);
  private static final int MOST_WATCHERS = 100;

  private final Plans plans;
  private final Semaphore places = new Semaphore(MOST_WATCHERS);

  @Inject
  ProgressResource(Plans plans) {
    this.plans = plans;
  }

  @GET
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(summary = "The falling curve of the search so far, or, as text/event-stream, live")
  public PlanProgress poll(@PathParam("plant") String plant, @PathParam("id") String id) {
    return plans.getProgress(plant, id);
  }

  /**
   * One event {@code improved} per point, its id the elapsed milliseconds, and one event {@code
   * ended} when the plan stands or failed. A client that comes back with {@code Last-Event-ID} is
   * not told old points again.
   */
  @GET
  @Produces(MediaType.SERVER_SENT_EVENTS)
  @Blocking
  public Multi<OutboundSseEvent> watch(
      @PathParam("plant") String plant,
      @PathParam("id") String id,
      @HeaderParam("Last-Event-ID") String lastEventId,
      @Context Sse sse) {
    // by its own id: another plan may come into force while this one is watched
    String plan = plans.getProgress(plant, id).plan();
    if (!places.tryAcquire()) {
      throw new ProblemException(
          ProblemType.UNAVAILABLE,
          MOST_WATCHERS + " searches are watched here already. Ask for the curve now and then.");
    }
    Seen seen = new Seen(lastEventId);
    return Multi.createFrom()
        .ticks()
        .every(LOOK_EVERY)
        .onOverflow()
        .drop()
        .emitOn(Infrastructure.getDefaultWorkerPool())
        .map(tick -> plans.getProgress(plant, plan))
        .select()
        .first(curve -> !seen.ended)
        .onItem()
        .transformToIterable(curve -> seen.events(curve, sse))
        .onTermination()
        .invoke(() -> places.release());
  }

  /** What a client has been told. Used by one stream, one look after the other. */
  private static final class Seen {

    private long upToMs;
    private volatile boolean ended;

    Seen(String lastEventId) {
      try {
        upToMs = lastEventId == null ? -1 : Long.parseLong(lastEventId);
      } catch (NumberFormatException e) {
        upToMs = -1;
      }
    }

    List<OutboundSseEvent> events(PlanProgress curve, Sse sse) {
      List<OutboundSseEvent> events = new ArrayList<>();
      for (Progress point : curve.points()) {
        if (point.elapsedMs() > upToMs) {
          upToMs = point.elapsedMs();
          events.add(
              sse.newEventBuilder()
                  .name("improved")
                  .id(String.valueOf(upToMs))
                  .mediaType(MediaType.APPLICATION_JSON_TYPE)
                  .data(Progress.class, point)
                  .build());
        }
      }
      if (curve.state() != PlanState.SOLVING) {
        ended = true;
        events.add(
            sse.newEventBuilder()
                .name("ended")
                .mediaType(MediaType.APPLICATION_JSON_TYPE)
                .data(PlanProgress.class, new PlanProgress(curve.plan(), curve.state(), List.of()))
                .build());
      }
      return events;
    }
  }
}
