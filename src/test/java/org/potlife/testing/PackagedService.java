package org.potlife.testing;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;

/** The packaged service as processes on one data folder and one port. */
public final class PackagedService {

  private static final Duration PATIENCE = Duration.ofSeconds(180);

  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
  private final List<Process> started = new ArrayList<>();
  private final Path folder;
  private final Map<String, String> environment;
  private final int port;

  /**
   * @param folder for data and logs
   * @param demo whether an empty database gets the demo plant
   */
  public PackagedService(Path folder, boolean demo) throws IOException {
    this(folder, Map.of("POTLIFE_DEMO", String.valueOf(demo)));
  }

  /**
   * @param folder for data and logs
   * @param environment settings; without an address of a database it starts its own
   */
  public PackagedService(Path folder, Map<String, String> environment) throws IOException {
    this.folder = folder;
    this.environment = Map.copyOf(environment);
    try (ServerSocket socket = new ServerSocket(0)) {
      port = socket.getLocalPort();
    }
  }

  /** The address without a path. */
  public String address() {
    return "http://127.0.0.1:" + port;
  }

  public Path data() {
    return folder.resolve("data");
  }

  public Path log(String name) {
    return folder.resolve(name + ".log");
  }

  /** Starts a process; its output goes to the log of this name. */
  public Process start(String name) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(ProcessHandle.current().info().command().orElse("java"));
    command.add("-Xmx384m");
    // a run of hundreds of starts on a small machine saves what it can
    command.addAll(List.of(System.getProperty("potlife.app.options", "-Xshare:auto").split(" ")));
    command.add("-jar");
    command.add(
        Path.of(System.getProperty("potlife.app", "target/quarkus-app"), "quarkus-run.jar")
            .toString());
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.appendTo(log(name).toFile()));
    builder.environment().put("POTLIFE_DATA", data().toString());
    builder.environment().put("QUARKUS_HTTP_PORT", String.valueOf(port));
    builder.environment().remove("QUARKUS_DATASOURCE_JDBC_URL");
    builder.environment().putAll(environment);
    Process process = builder.start();
    started.add(process);
    return process;
  }

  /** The process that was started last. */
  public Process last() {
    return started.get(started.size() - 1);
  }

  public HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create(address() + path)).timeout(Duration.ofSeconds(30));
  }

  public HttpResponse<String> send(HttpRequest.Builder request)
      throws IOException, InterruptedException {
    return client.send(request.build(), BodyHandlers.ofString());
  }

  /** The path of what an answer says it made. */
  public static String made(HttpResponse<String> answer) {
    return URI.create(answer.headers().firstValue("Location").orElseThrow()).getPath();
  }

  /** Waits until the path answers as wanted. */
  public String await(String path, Predicate<HttpResponse<String>> wanted)
      throws InterruptedException {
    Optional<HttpResponse<String>> last = Optional.empty();
    long deadline = System.nanoTime() + PATIENCE.toNanos();
    while (System.nanoTime() < deadline) {
      try {
        HttpResponse<String> answer = send(request(path));
        if (wanted.test(answer)) {
          return answer.body();
        }
        last = Optional.of(answer);
      } catch (IOException notYet) {
        // it does not listen yet
      }
      if (!last().isAlive()) {
        throw new AssertionError("the service ended");
      }
      Thread.sleep(200);
    }
    throw new AssertionError(path + " not as wanted in " + PATIENCE + ", at last " + last);
  }

  /** Ends every process that was started. */
  public void end() throws InterruptedException {
    for (Process process : started) {
      process.destroy();
      process.waitFor(60, TimeUnit.SECONDS);
      process.destroyForcibly();
    }
  }
}
