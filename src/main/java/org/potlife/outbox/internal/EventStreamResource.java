package org.potlife.outbox.internal;

import io.smallrye.common.annotation.Blocking;
import io.smallrye.mutiny.Multi;
import io.vertx.core.http.HttpServerRequest;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.sse.OutboundSseEvent;
import jakarta.ws.rs.sse.Sse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.ResponseHeader;
import org.potlife.outbox.internal.StreamReader.Gap;
import org.potlife.outbox.internal.StreamReader.Page;
import org.potlife.platform.access.Roles;
import org.potlife.platform.problem.ProblemException;
import org.potlife.shop.Shops;

/** What happens in a plant, live, as server-sent events. */
@Path("/api/v1/plants/{plant}/events/stream")
@Tag(name = "events")
@RolesAllowed({Roles.VIEWER, Roles.ERP})
public class EventStreamResource {

  private static final long RECONNECT_MS = 2000;

  private final Shops shops;
  private final StreamHub hub;
  private final OutboxReader outbox;

  @Inject
  EventStreamResource(Shops shops, StreamHub hub, OutboxReader outbox) {
    this.shops = shops;
    this.hub = hub;
    this.outbox = outbox;
  }

  @GET
  @Produces(MediaType.SERVER_SENT_EVENTS)
  @Blocking
  @ResponseHeader(name = "Cache-Control", value = "no-store")
  @ResponseHeader(name = "X-Accel-Buffering", value = "no")
  @Operation(
      summary = "What happens in the plant, live: CloudEvents as server-sent events",
      description =
          "The id of an event is its number in the plant. Last-Event-ID resumes after a number,"
              + " lastEventId does where no header can be sent, 0 begins with the oldest that is"
              + " kept; without either only what is new is told. types filters by names, such as"
              + " plan.published,promise.*. An event gap says that numbers were missed for good:"
              + " read the state anew. A comment comes every 15 s when nothing else does.")
  public Multi<OutboundSseEvent> stream(
      @PathParam("plant") String plant,
      @HeaderParam("Last-Event-ID") String lastEventId,
      @QueryParam("lastEventId") String lastEventIdByQuery,
      @QueryParam("types") String types,
      @Context HttpServerRequest request,
      @Context Sse sse) {
    shops.getShop(plant);
    EventTypes wanted = wanted(types);
    Optional<Long> after = number(lastEventId != null ? lastEventId : lastEventIdByQuery);
    StreamReader reader =
        new StreamReader(
            plant, hub, outbox, after, () -> request.response().reset(), System::nanoTime);
    hub.enter(reader);
    return reader.pages().onItem().transformToIterable(page -> written(page, wanted, sse));
  }

  private static EventTypes wanted(String types) {
    EventTypes wanted = EventTypes.parse(types);
    if (!wanted.misnamed().isEmpty()) {
      throw ProblemException.badRequest(
          "types lists names such as plan.published or plan.*, separated by commas.");
    }
    return wanted;
  }

  private static Optional<Long> number(String id) {
    if (id == null || id.isBlank()) {
      return Optional.empty();
    }
    if (!id.strip().matches("\\d{1,18}")) {
      throw ProblemException.badRequest(
          "Last-Event-ID is the number of an event of this stream, or 0 for all that are kept.");
    }
    return Optional.of(Long.parseLong(id.strip()));
  }

  private static List<OutboundSseEvent> written(Page page, EventTypes wanted, Sse sse) {
    List<OutboundSseEvent> blocks = new ArrayList<>();
    if (page.gap() != null) {
      blocks.add(
          sse.newEventBuilder()
              .name("gap")
              .mediaType(MediaType.APPLICATION_JSON_TYPE)
              .data(Gap.class, page.gap())
              .build());
    }
    for (OutboxEvent event : page.events()) {
      if (wanted.wants(event.type())) {
        blocks.add(
            sse.newEventBuilder()
                .id(String.valueOf(event.seq()))
                .mediaType(MediaType.TEXT_PLAIN_TYPE)
                .data(String.class, event.event())
                .build());
      }
    }
    boolean quiet = page.events().stream().noneMatch(event -> wanted.wants(event.type()));
    if (quiet && !page.ended()) {
      blocks.add(heartbeat(page.upTo(), sse));
    }
    return blocks;
  }

  /**
   * A comment, and the number up to which nothing was missed: without data a client dispatches no
   * event, but resumes from there.
   */
  private static OutboundSseEvent heartbeat(long upTo, Sse sse) {
    return sse.newEventBuilder()
        .comment("all is quiet")
        .id(String.valueOf(upTo))
        .reconnectDelay(RECONNECT_MS)
        .build();
  }
}
