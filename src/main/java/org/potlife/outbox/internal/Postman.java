package org.potlife.outbox.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.net.ConnectException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpConnectTimeoutException;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.net.http.HttpTimeoutException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Carries one event to one address. Follows no redirect: it could lead anywhere. */
@ApplicationScoped
class Postman {

  /** Seconds since 1970 at which the delivery was signed. */
  static final String TIME = "Potlife-Hook-Time";

  /** {@code v1=} and the HMAC-SHA256 of time, dot and body. */
  static final String SIGNATURE = "Potlife-Hook-Signature";

  /** Number of the event in its plant. */
  static final String SEQUENCE = "Potlife-Hook-Sequence";

  /** Which try it is, from 1. */
  static final String TRY = "Potlife-Hook-Try";

  private static final Duration CONNECT = Duration.ofSeconds(5);
  private static final int REDIRECT = 300;
  private static final int REFUSED = 400;

  private final HttpClient client =
      HttpClient.newBuilder()
          .version(HttpClient.Version.HTTP_1_1)
          .followRedirects(HttpClient.Redirect.NEVER)
          .connectTimeout(CONNECT)
          .build();
  private final Duration timeout;

  @Inject
  Postman(
      @ConfigProperty(name = "potlife.webhooks.timeout", defaultValue = "10S") Duration timeout) {
    this.timeout = timeout;
  }

  /**
   * Posts an event.
   *
   * @param now the machine's time, which the other side compares with its own
   * @return why it was not taken, without anything that the other side sent but its status; empty
   *     when it was
   */
  Optional<String> post(Webhook hook, long seq, String event, int tries, Instant now)
      throws InterruptedException {
    URI address = URI.create(hook.url);
    // looked up anew each time: a name may lead elsewhere than when the hook was set
    Optional<String> barred = HookAddress.barred(address);
    if (barred.isPresent()) {
      return barred;
    }
    byte[] body = event.getBytes(StandardCharsets.UTF_8);
    HttpRequest request =
        HttpRequest.newBuilder(address)
            .timeout(timeout)
            .header("Content-Type", "application/cloudevents+json")
            .header("User-Agent", "Potlife")
            .header(SEQUENCE, String.valueOf(seq))
            .header(TRY, String.valueOf(tries))
            .header(TIME, String.valueOf(now.getEpochSecond()))
            .header(SIGNATURE, Signature.of(hook.secret, now.getEpochSecond(), body))
            .POST(BodyPublishers.ofByteArray(body))
            .build();
    CompletableFuture<HttpResponse<Void>> answer =
        client.sendAsync(request, BodyHandlers.discarding());
    try {
      // over all: an answer that never ends must not hold the worker
      return refusal(answer.get(timeout.toMillis(), TimeUnit.MILLISECONDS).statusCode());
    } catch (TimeoutException e) {
      return Optional.of("no answer within " + timeout.toSeconds() + " s");
    } catch (ExecutionException e) {
      return Optional.of(words(e.getCause()));
    } finally {
      answer.cancel(true);
    }
  }

  private static Optional<String> refusal(int status) {
    if (status >= REDIRECT && status < REFUSED) {
      return Optional.of("answered " + status + "; redirects are not followed");
    }
    return status >= 200 && status < REDIRECT
        ? Optional.empty()
        : Optional.of("answered " + status);
  }

  private String words(Throwable cause) {
    if (cause instanceof HttpConnectTimeoutException) {
      return "no connection within " + CONNECT.toSeconds() + " s";
    }
    if (cause instanceof HttpTimeoutException) {
      return "no answer within " + timeout.toSeconds() + " s";
    }
    if (cause instanceof ConnectException) {
      return "nobody listens there";
    }
    return "the connection failed (" + cause.getClass().getSimpleName() + ")";
  }
}
