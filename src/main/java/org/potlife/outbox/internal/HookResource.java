package org.potlife.outbox.internal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.List;
import java.util.regex.Pattern;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.potlife.outbox.internal.Webhook.Key;
import org.potlife.platform.access.Roles;
import org.potlife.platform.http.Preconditions;
import org.potlife.platform.json.Bodies;
import org.potlife.platform.problem.ProblemException;
import org.potlife.shop.Shops;

/** Webhooks: who is told by a request what happens in a plant. */
@Path("/api/v1/plants/{plant}/webhooks")
@Tag(name = "webhooks", description = "Who is told by a request what happens in a plant")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed(Roles.PLANNER)
public class HookResource {

  private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]{0,39}");
  private static final int MOST_LETTERS = 200;

  private final Shops shops;
  private final HookDesk desk;
  private final HookJobs jobs;
  private final Bodies bodies;
  private final ObjectMapper mapper;
  private final boolean plainHttp;

  @Inject
  HookResource(
      Shops shops,
      HookDesk desk,
      HookJobs jobs,
      Bodies bodies,
      ObjectMapper mapper,
      @ConfigProperty(name = "potlife.webhooks.plain-http", defaultValue = "false")
          boolean plainHttp) {
    this.shops = shops;
    this.desk = desk;
    this.jobs = jobs;
    this.bodies = bodies;
    this.mapper = mapper;
    this.plainHttp = plainHttp;
  }

  /** An event that was not taken, with why. */
  record Letter(
      long seq,
      String type,
      int tries,
      String lastFailure,
      Instant lastTryAt,
      boolean redelivery,
      JsonNode event) {}

  @PUT
  @Path("{name}")
  @Consumes(MediaType.APPLICATION_JSON)
  @Transactional
  @Operation(
      summary = "Makes or changes a webhook",
      description =
          "Each event is posted on its own, in order, signed with HMAC-SHA256 under the secret:"
              + " Potlife-Hook-Signature is v1= and the code over Potlife-Hook-Time, a dot and the"
              + " body. A new one is told from now on; a changed one goes on where it was.")
  @APIResponse(responseCode = "201", description = "The webhook is new")
  @APIResponse(
      responseCode = "200",
      description = "The webhook is changed",
      content = @Content(schema = @Schema(implementation = HookView.class)))
  public Response put(
      @PathParam("plant") String plant,
      @PathParam("name") String name,
      @Context HttpHeaders headers,
      @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = HookBody.class)))
          byte[] body) {
    shops.lockShop(plant).orElseThrow(() -> ProblemException.notFound("There is no such plant."));
    if (!NAME.matcher(name).matches()) {
      throw ProblemException.badRequest(
          "A webhook's name has 1 to 40 small letters, digits or hyphens and begins with a letter"
              + " or digit.");
    }
    HookBody sent = bodies.read(body, HookBody.class, hook -> hook.check(plainHttp));
    HookDesk.Put put = desk.put(new Key(plant, name), sent, Preconditions.of(headers)::allowChange);
    return tagged(
        Response.status(put.created() ? Response.Status.CREATED : Response.Status.OK), put.hook());
  }

  @GET
  @Operation(summary = "The plant's webhooks")
  public List<HookView> list(@PathParam("plant") String plant) {
    shops.getShop(plant);
    return desk.list(plant);
  }

  @GET
  @Path("{name}")
  @Operation(summary = "A webhook: how far it is, and what failed last; never its secret")
  @APIResponse(
      responseCode = "200",
      content = @Content(schema = @Schema(implementation = HookView.class)))
  public Response get(@PathParam("plant") String plant, @PathParam("name") String name) {
    shops.getShop(plant);
    return tagged(Response.ok(), desk.get(new Key(plant, name)));
  }

  @DELETE
  @Path("{name}")
  @Operation(summary = "Removes a webhook with its dead letters")
  @APIResponse(responseCode = "204", description = "It is removed")
  public Response remove(@PathParam("plant") String plant, @PathParam("name") String name) {
    shops.getShop(plant);
    desk.remove(new Key(plant, name));
    return Response.noContent().build();
  }

  @GET
  @Path("{name}/dead-letters")
  @Operation(summary = "Events that were set aside after too many tries, the oldest first")
  public List<Letter> deadLetters(
      @PathParam("plant") String plant, @PathParam("name") String name) {
    shops.getShop(plant);
    return desk.listDeadLetters(new Key(plant, name), MOST_LETTERS).stream()
        .map(this::letter)
        .toList();
  }

  @POST
  @Path("{name}/dead-letters/{seq:[0-9]{1,18}}/redelivery")
  @Consumes(MediaType.WILDCARD)
  @Operation(
      summary = "Lets a dead letter be tried once more",
      description = "It leaves the list when it is taken. Takes no body.")
  @APIResponse(
      responseCode = "202",
      content = @Content(schema = @Schema(implementation = Letter.class)))
  public Response redeliver(
      @PathParam("plant") String plant,
      @PathParam("name") String name,
      @PathParam("seq") long seq) {
    shops.getShop(plant);
    Key key = new Key(plant, name);
    Letter letter = letter(desk.redeliver(key, seq));
    jobs.hurry(key);
    return Response.accepted(letter).build();
  }

  private Letter letter(DeadLetter letter) {
    try {
      return new Letter(
          letter.key.seq(),
          letter.type,
          letter.tries,
          letter.lastFailure,
          letter.lastTryAt,
          letter.redelivery,
          mapper.readTree(letter.event));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Response tagged(Response.ResponseBuilder answer, HookView hook) {
    return answer.header(HttpHeaders.ETAG, Preconditions.tag(hook.version())).entity(hook).build();
  }
}
