package org.potlife.reliability;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicInteger;

/** Listens to a plant's stream from its first event on and comes back whenever it is cut off. */
final class Witness implements AutoCloseable {

  private static final int UNTIL_AGAIN_MS = 50;

  private final Map<Long, String> heard = new ConcurrentHashMap<>();
  private final Queue<String> faults = new ConcurrentLinkedQueue<>();
  private final AtomicInteger connections = new AtomicInteger();
  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
  private final String plant;
  private final Thread thread;
  private volatile long last;
  private volatile boolean stopped;

  /**
   * @param plant address of the plant
   */
  Witness(String plant) {
    this.plant = plant;
    thread = new Thread(this::listen, "witness");
    thread.setDaemon(true);
    thread.start();
  }

  private void listen() {
    while (!stopped) {
      try (BufferedReader lines = open()) {
        connections.incrementAndGet();
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
          hear(line);
        }
      } catch (IOException e) {
        pause();
      } catch (InterruptedException e) {
        return;
      }
    }
  }

  private BufferedReader open() throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(plant + "/events/stream"))
            .header("Last-Event-ID", String.valueOf(last))
            .build();
    var answer = client.send(request, BodyHandlers.ofInputStream());
    if (answer.statusCode() != 200) {
      answer.body().close();
      throw new IOException("answered " + answer.statusCode());
    }
    return new BufferedReader(new InputStreamReader(answer.body(), StandardCharsets.UTF_8));
  }

  private long announced;

  private void hear(String line) {
    if (line.startsWith("id:")) {
      announced = Long.parseLong(line.substring(3).strip());
    } else if (line.startsWith("event:")) {
      faults.add("after " + last + ": " + line);
    } else if (line.startsWith("data:")) {
      if (announced != last + 1) {
        faults.add(announced + " follows on " + last);
      }
      heard.put(announced, line.substring(5).strip());
      last = announced;
    }
  }

  private static void pause() {
    try {
      Thread.sleep(UNTIL_AGAIN_MS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Number of the last event. */
  long last() {
    return last;
  }

  int connections() {
    return connections.get();
  }

  Map<Long, String> heard() {
    return heard;
  }

  List<String> faults() {
    return List.copyOf(faults);
  }

  @Override
  public void close() {
    stopped = true;
    thread.interrupt();
  }
}
