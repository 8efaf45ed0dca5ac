package org.potlife.outbox;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;
import java.util.function.Predicate;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** An ERP that takes what a webhook posts, and answers as it is told to. */
public final class Receiver implements AutoCloseable {

  /** An answer that never comes. */
  public static final int SILENCE = -1;

  private static final long PATIENCE_NS = 30_000_000_000L;

  private final List<Posted> posted = new CopyOnWriteArrayList<>();
  private final ExecutorService threads = Executors.newCachedThreadPool();
  private final HttpServer server;
  private volatile Function<Posted, Integer> answer = request -> 204;

  /**
   * What was posted.
   *
   * @param answered status that the receiver gave
   */
  public record Posted(
      long seq, int tries, long time, String signature, String type, String body, int answered) {

    /** The type of the event without prefix. */
    public String event() {
      return body.replaceAll(".*\"type\":\"org\\.potlife\\.([a-z.-]+)\".*", "$1");
    }

    /** Whether the sender knows the secret: HMAC-SHA256 over time, dot and body. */
    public boolean signedWith(String secret) {
      try {
        Mac mac = Mac.getInstance("HmacSHA256");
        mac.init(new SecretKeySpec(secret.getBytes(StandardCharsets.UTF_8), "HmacSHA256"));
        StringBuilder code = new StringBuilder("v1=");
        for (byte b : mac.doFinal((time + "." + body).getBytes(StandardCharsets.UTF_8))) {
          code.append("%02x".formatted(b));
        }
        return code.toString().equals(signature);
      } catch (GeneralSecurityException e) {
        throw new IllegalStateException(e);
      }
    }
  }

  public Receiver() throws IOException {
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.setExecutor(threads);
    server.createContext("/", this::take);
    server.start();
  }

  public String url() {
    return "http://127.0.0.1:" + server.getAddress().getPort() + "/hook";
  }

  /** Lets it answer with these statuses from now on. */
  public void answers(Function<Posted, Integer> status) {
    answer = status;
  }

  private void take(HttpExchange exchange) throws IOException {
    var headers = exchange.getRequestHeaders();
    Posted request =
        new Posted(
            Long.parseLong(headers.getFirst("Potlife-Hook-Sequence")),
            Integer.parseInt(headers.getFirst("Potlife-Hook-Try")),
            Long.parseLong(headers.getFirst("Potlife-Hook-Time")),
            headers.getFirst("Potlife-Hook-Signature"),
            headers.getFirst("Content-Type"),
            new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8),
            0);
    int status = answer.apply(request);
    posted.add(
        new Posted(
            request.seq(),
            request.tries(),
            request.time(),
            request.signature(),
            request.type(),
            request.body(),
            status));
    if (status == SILENCE) {
      return;
    }
    if (status == 302) {
      exchange.getResponseHeaders().add("Location", url() + "/elsewhere");
    }
    exchange.sendResponseHeaders(status, -1);
    exchange.close();
  }

  /** Everything that was posted, in the order of its arrival. */
  public List<Posted> posted() {
    return List.copyOf(posted);
  }

  /** What was taken, in the order of its arrival. */
  public List<Posted> taken() {
    return posted.stream().filter(p -> p.answered() == 204).toList();
  }

  /** Waits until enough was posted. */
  public void await(Predicate<Receiver> enough) throws InterruptedException {
    long end = System.nanoTime() + PATIENCE_NS;
    while (!enough.test(this)) {
      if (System.nanoTime() > end) {
        throw new AssertionError("not posted in 30 s: " + posted);
      }
      Thread.sleep(10);
    }
  }

  @Override
  public void close() {
    server.stop(0);
    threads.shutdownNow();
  }
}
