package org.potlife.outbox;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Predicate;

/** Somebody who listens to a plant's stream, as a browser would (WHATWG, server-sent events). */
public final class Listener implements AutoCloseable {

  private static final Duration PATIENCE = Duration.ofSeconds(30);

  private final List<Heard> heard = new CopyOnWriteArrayList<>();
  private final InputStream stream;
  private final Thread thread;
  private volatile String lastId = "";
  private volatile boolean ended;

  /**
   * Something that was heard.
   *
   * @param id number that holds when it was dispatched
   * @param name name of the event; message when it has none
   */
  public record Heard(String id, String name, String data) {

    /** The type without prefix. */
    public String type() {
      return data.replaceAll(".*\"type\":\"org\\.potlife\\.([a-z.-]+)\".*", "$1");
    }
  }

  private Listener(InputStream stream) {
    this.stream = stream;
    thread = new Thread(this::read, "listener");
    thread.setDaemon(true);
    thread.start();
  }

  /**
   * Opens a stream and waits for its first block.
   *
   * @param address with query
   * @param lastEventId null to send none
   */
  public static Listener to(String address, String lastEventId)
      throws IOException, InterruptedException {
    HttpResponse<InputStream> answer = open(address, lastEventId);
    if (answer.statusCode() != 200) {
      throw new AssertionError("stream answered " + answer.statusCode());
    }
    return new Listener(answer.body());
  }

  /** The answer to a request for a stream. */
  public static HttpResponse<InputStream> open(String address, String lastEventId)
      throws IOException, InterruptedException {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(address))
            .timeout(PATIENCE)
            .header("Accept", "text/event-stream");
    if (lastEventId != null) {
      request.header("Last-Event-ID", lastEventId);
    }
    return HttpClient.newBuilder()
        .version(HttpClient.Version.HTTP_1_1)
        .build()
        .send(request.build(), BodyHandlers.ofInputStream());
  }

  private void read() {
    try (BufferedReader lines =
        new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      String name = "message";
      StringBuilder data = new StringBuilder();
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        if (line.isEmpty()) {
          if (data.length() > 0) {
            heard.add(new Heard(lastId, name, data.toString().strip()));
          }
          name = "message";
          data.setLength(0);
        } else if (line.startsWith("id:")) {
          lastId = line.substring(3).strip();
        } else if (line.startsWith("event:")) {
          name = line.substring(6).strip();
        } else if (line.startsWith("data:")) {
          data.append(line.substring(5)).append('\n');
        }
      }
    } catch (IOException e) {
      // cut off
    }
    ended = true;
  }

  /** The number from which a new connection would go on. */
  public String lastId() {
    return lastId;
  }

  public boolean ended() {
    return ended;
  }

  public List<Heard> heard() {
    return List.copyOf(heard);
  }

  public List<String> types() {
    return heard.stream().map(Heard::type).toList();
  }

  /** Waits until enough was heard. */
  public List<Heard> await(Predicate<List<Heard>> enough) throws InterruptedException {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (!enough.test(heard())) {
      if (System.nanoTime() > end) {
        throw new AssertionError("not heard in " + PATIENCE + ": " + heard);
      }
      Thread.sleep(10);
    }
    return heard();
  }

  @Override
  public void close() throws IOException {
    stream.close();
  }
}
