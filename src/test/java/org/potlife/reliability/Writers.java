package org.potlife.reliability;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * An ERP and an ink room that write all the time. Each write is repeated until it is acknowledged,
 * as a careful client does, and is kept in mind from then on.
 */
final class Writers {

  private static final Duration UNTIL_AGAIN = Duration.ofMillis(50);

  /** Orders that are open at a time; the oldest are cancelled, so that the plant stays small. */
  private static final int MOST_OPEN = 12;

  private final Set<String> placed = ConcurrentHashMap.newKeySet();
  private final Set<String> cancelled = ConcurrentHashMap.newKeySet();
  private final Set<String> stocked = ConcurrentHashMap.newKeySet();
  private final AtomicInteger repeated = new AtomicInteger();
  private final Queue<String> faults = new ConcurrentLinkedQueue<>();
  private final List<Thread> threads = new ArrayList<>();
  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
  private final String plant;
  private final Gate gate;
  private volatile boolean stopped;

  /**
   * @param plant address of the plant
   * @param gate nobody writes while it is closed
   */
  Writers(String plant, Gate gate) {
    this.plant = plant;
    this.gate = gate;
    begin("erp", this::writeOrders);
    begin("erp-many", this::writeManyOrders);
    begin("ink-room", this::writeEvents);
  }

  private interface Work {
    void run() throws Exception;
  }

  private void begin(String name, Work work) {
    Thread thread =
        new Thread(
            () -> {
              try {
                work.run();
              } catch (Exception e) {
                faults.add(name + " ended: " + e);
              }
            },
            name);
    thread.setDaemon(true);
    threads.add(thread);
    thread.start();
  }

  private void writeOrders() throws Exception {
    Queue<String> open = new ConcurrentLinkedQueue<>();
    for (int i = 0; !stopped; i++) {
      String reference = "K-" + i;
      String body = Yard.order(reference);
      if (acknowledged(put("/orders/" + reference, body), 200, 201)) {
        placed.add(reference);
        open.add(reference);
      }
      if (open.size() > MOST_OPEN) {
        String oldest = open.remove();
        if (acknowledged(request("/orders/" + oldest).DELETE(), 204)) {
          cancelled.add(oldest);
        }
      }
    }
  }

  private void writeManyOrders() throws Exception {
    for (int i = 0; !stopped; i++) {
      String one = "M-" + i + "-a";
      String other = "M-" + i + "-b";
      HttpRequest.Builder post =
          request("/orders")
              .header("Idempotency-Key", "many-" + i)
              .POST(BodyPublishers.ofString("[" + Yard.order(one) + "," + Yard.order(other) + "]"));
      if (acknowledged(post, 200)) {
        placed.add(one);
        placed.add(other);
      }
      for (String each : List.of(one, other)) {
        if (placed.contains(each) && acknowledged(request("/orders/" + each).DELETE(), 204)) {
          cancelled.add(each);
        }
      }
    }
  }

  private void writeEvents() throws Exception {
    for (int i = 0; !stopped; i++) {
      String container = "tub-" + i;
      String event =
          """
          {"specversion":"1.0","id":"s-%d","source":"/scales/1","type":"org.potlife.ink.stocked",
           "data":{"container":"%s","ink":"sky","massG":%d}}
          """
              .formatted(i, container, massG(i));
      if (acknowledged(request("/events").POST(BodyPublishers.ofString(event)), 200)) {
        stocked.add(container);
      }
    }
  }

  /** What a container holds, so that it can be told whether it was stocked twice. */
  static int massG(int number) {
    return 1000 + number % 7;
  }

  private HttpRequest.Builder put(String path, String body) {
    return request(path).PUT(BodyPublishers.ofString(body));
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create(plant + path))
        .timeout(Duration.ofSeconds(20))
        .header("Content-Type", "application/json");
  }

  /** Sends until there is an answer that says yes; false when the day is over before. */
  private boolean acknowledged(HttpRequest.Builder request, int... yes)
      throws InterruptedException {
    boolean first = true;
    gate.pass();
    while (!stopped) {
      if (!first) {
        repeated.incrementAndGet();
      }
      first = false;
      try {
        HttpResponse<String> answer = client.send(request.build(), BodyHandlers.ofString());
        for (int status : yes) {
          if (answer.statusCode() == status) {
            return true;
          }
        }
        if (answer.statusCode() != 503) {
          faults.add(request.build().uri() + " answered " + answer.statusCode() + answer.body());
        }
      } catch (IOException e) {
        // it is away
      }
      Thread.sleep(UNTIL_AGAIN.toMillis());
    }
    return false;
  }

  int acknowledgedWrites() {
    return placed.size() + cancelled.size() + stocked.size();
  }

  int repeatedRequests() {
    return repeated.get();
  }

  Set<String> placed() {
    return placed;
  }

  Set<String> cancelled() {
    return cancelled;
  }

  Set<String> stocked() {
    return stocked;
  }

  /** What went wrong that no kill explains. */
  List<String> faults() {
    return List.copyOf(faults);
  }

  void stop() throws InterruptedException {
    stopped = true;
    for (Thread thread : threads) {
      thread.join(30_000);
    }
  }
}
