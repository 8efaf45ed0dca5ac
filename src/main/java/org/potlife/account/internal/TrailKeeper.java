package org.potlife.account.internal;

import io.quarkus.arc.Arc;
import io.quarkus.runtime.BlockingOperationControl;
import io.smallrye.mutiny.infrastructure.Infrastructure;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.Initialized;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.transaction.TransactionScoped;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.container.ResourceInfo;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/**
 * Keeps the trail of every write. The entry is written with the first transaction that the write
 * begins, before anything else in it; the answer adds its status in a transaction of its own.
 */
@ApplicationScoped
class TrailKeeper {

  private static final Logger LOG = Logger.getLogger(TrailKeeper.class);
  private static final Set<String> READS = Set.of("GET", "HEAD", "OPTIONS");

  /** Names in paths that are no business of the trail. */
  private static final Set<String> NOT_ABOUT = Set.of("plant", "secret");

  private static final int LONGEST = 200;

  /** A name in a path with its pattern, which may have braces of its own. */
  private static final String PATTERNED = "\\{\\s*([^:}\\s]+)\\s*:(?:[^{}]|\\{[^{}]*})*}";

  private final TrailDraft draft;
  private final TrailBook book;

  @Inject
  TrailKeeper(TrailDraft draft, TrailBook book) {
    this.draft = draft;
    this.book = book;
  }

  @ServerRequestFilter
  void open(ContainerRequestContext request, ResourceInfo resource) {
    note(request, resource);
  }

  void begin(@Observes @Initialized(TransactionScoped.class) Object transaction) {
    if (Arc.container().requestContext().isActive()) {
      draft.begun().ifPresent(book::begin);
    }
  }

  @ServerResponseFilter
  void close(
      ContainerRequestContext request, ContainerResponseContext answer, ResourceInfo resource) {
    if (!draft.isOpen()) {
      // refused before any filter saw it
      note(request, resource);
    }
    int status = answer.getStatus();
    draft.begun().ifPresent(begun -> complete(begun, status));
  }

  private void note(ContainerRequestContext request, ResourceInfo resource) {
    if (READS.contains(request.getMethod()) || resource.getResourceMethod() == null) {
      return;
    }
    UriInfo uri = request.getUriInfo();
    draft.open(
        request.getMethod(),
        template(resource),
        bounded(uri.getPathParameters().getFirst("plant")),
        bounded(about(uri.getPathParameters())));
  }

  private void complete(TrailBook.Begun begun, int status) {
    if (status == Response.Status.SERVICE_UNAVAILABLE.getStatusCode()) {
      // the database is away: it would only be waited for once more
      return;
    }
    if (BlockingOperationControl.isBlockingAllowed()) {
      store(begun, status);
    } else {
      Infrastructure.getDefaultWorkerPool().execute(() -> store(begun, status));
    }
  }

  /** The answer stands whatever becomes of this: what the write stored has its entry already. */
  private void store(TrailBook.Begun begun, int status) {
    try {
      book.complete(begun, status);
    } catch (RuntimeException e) {
      LOG.errorf(e, "The trail lacks the outcome %d of a write by %s", status, begun.who());
    }
  }

  private static String template(ResourceInfo resource) {
    Path ofClass = resource.getResourceClass().getAnnotation(Path.class);
    Path ofMethod = resource.getResourceMethod().getAnnotation(Path.class);
    String all =
        "/"
            + (ofClass == null ? "" : ofClass.value())
            + "/"
            + (ofMethod == null ? "" : ofMethod.value());
    String plain = all.replaceAll("/+", "/").replaceAll(PATTERNED, "{$1}");
    return plain.length() > 1 && plain.endsWith("/")
        ? plain.substring(0, plain.length() - 1)
        : plain;
  }

  private static String about(MultivaluedMap<String, String> names) {
    return new TreeMap<>(names)
        .entrySet().stream()
            .filter(name -> !NOT_ABOUT.contains(name.getKey()))
            .map(name -> name.getKey() + " " + name.getValue().get(0))
            .collect(Collectors.collectingAndThen(Collectors.joining(", "), TrailKeeper::orNull));
  }

  private static String orNull(String text) {
    return text.isEmpty() ? null : text;
  }

  /** Names from outside are not trusted to be short or without control characters. */
  private static String bounded(String text) {
    if (text == null) {
      return null;
    }
    String printable = text.replaceAll("\\p{Cntrl}", "?");
    return printable.length() <= LONGEST ? printable : printable.substring(0, LONGEST);
  }
}
