package org.potlife.reliability;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;

/** A planner who asks for plans and publishes each as soon as it stands. */
final class Planner {

  private static final Duration LOOK = Duration.ofMillis(200);
  private static final Duration REST = Duration.ofSeconds(3);
  private static final int MOST_LOOKS = 300;

  private final Set<String> published = ConcurrentHashMap.newKeySet();
  private final AtomicInteger stale = new AtomicInteger();
  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
  private final String plans;
  private final Gate gate;
  private final Thread thread;
  private volatile boolean stopped;

  /**
   * @param plant address of the plant
   * @param gate closed for a plan's first seconds; it would be stale otherwise
   */
  Planner(String plant, Gate gate) {
    plans = plant + "/plans";
    this.gate = gate;
    thread = new Thread(this::plan, "planner");
    thread.setDaemon(true);
    thread.start();
  }

  private void plan() {
    while (!stopped) {
      try {
        HttpResponse<String> asked = send(post("", "{\"solveSeconds\":1}"));
        if (asked.statusCode() == 202) {
          gate.close();
          String plan = asked.headers().firstValue("Location").orElseThrow();
          publish(plan.substring(plan.lastIndexOf('/') + 1));
        }
        gate.open();
        Thread.sleep(REST.toMillis());
      } catch (IOException e) {
        // it is away
      } catch (InterruptedException e) {
        return;
      } finally {
        gate.open();
      }
    }
  }

  private void publish(String id) throws InterruptedException {
    for (int looks = 0; looks < MOST_LOOKS && !stopped; looks++) {
      Thread.sleep(LOOK.toMillis());
      try {
        if (!send(get("/" + id)).body().contains("\"state\":\"solving\"")) {
          int status = send(post("/" + id + "/publication", "")).statusCode();
          if (status == 200) {
            published.add(id);
          } else {
            stale.incrementAndGet();
          }
          return;
        }
      } catch (IOException e) {
        // it is away
      }
    }
  }

  private HttpRequest post(String path, String body) {
    return HttpRequest.newBuilder(URI.create(plans + path))
        .timeout(Duration.ofSeconds(20))
        .POST(BodyPublishers.ofString(body))
        .build();
  }

  private HttpRequest get(String path) {
    return HttpRequest.newBuilder(URI.create(plans + path)).timeout(Duration.ofSeconds(20)).build();
  }

  private HttpResponse<String> send(HttpRequest request) throws IOException, InterruptedException {
    return client.send(request, BodyHandlers.ofString());
  }

  /** Plans whose publication was acknowledged. */
  Set<String> published() {
    return published;
  }

  /** Drafts that were refused, because an order had come or gone meanwhile. */
  int refused() {
    return stale.get();
  }

  void stop() throws InterruptedException {
    stopped = true;
    thread.interrupt();
    thread.join(30_000);
  }
}
