package org.potlife.platform.db;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.potlife.Documents;

/** The packaged service as a process, with its own PostgreSQL. */
class StartUpIT {

  private static final Duration PATIENCE = Duration.ofSeconds(120);

  private final HttpClient client = HttpClient.newHttpClient();
  private final List<Process> started = new ArrayList<>();
  @TempDir private Path folder;
  private int port;

  @BeforeEach
  void findPort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0)) {
      port = socket.getLocalPort();
    }
  }

  @AfterEach
  void endWhatWasStarted() throws Exception {
    for (Process process : started) {
      process.destroy();
      process.waitFor(60, TimeUnit.SECONDS);
      process.destroyForcibly();
    }
  }

  @Test
  void aSecondInstanceOnTheSameDataIsRefusedInOneLine() throws Exception {
    awaitReady(start("first"));
    Process second = start("second");
    assertThat(second.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(second.exitValue()).isNotZero();
    assertThat(Files.readAllLines(log("second")))
        .singleElement()
        .asString()
        .contains("Another Potlife already runs on");
  }

  @Test
  void aStoppedServiceStopsItsDatabase() throws Exception {
    Process service = start("first");
    awaitReady(service);
    ProcessHandle server = server();
    service.destroy();
    assertThat(service.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(server.isAlive()).isFalse();
    assertThat(data().resolve("database/postmaster.pid")).doesNotExist();
  }

  @Test
  void aKilledServiceLeavesNoDatabaseBehind() throws Exception {
    Process service = start("first");
    awaitReady(service);
    ProcessHandle server = server();
    service.destroyForcibly();
    server.onExit().get(PATIENCE.toSeconds(), TimeUnit.SECONDS);
    assertThat(server.isAlive()).isFalse();
  }

  @Test
  void whatWasStoredSurvivesAKillThatLeavesTheDatabaseRunning() throws Exception {
    Process service = start("first");
    awaitReady(service);
    assertThat(putShop()).isEqualTo(201);
    ProcessHandle orphan = server();
    service.children().forEach(ProcessHandle::destroyForcibly);
    service.destroyForcibly().waitFor();
    assertThat(orphan.isAlive()).isTrue();

    awaitReady(start("next"));

    assertThat(orphan.isAlive()).isFalse();
    assertThat(get("/api/v1/plants/demo/shop").statusCode()).isEqualTo(200);
  }

  @Test
  void aFirstStartThatBrokeOffIsMadeAgain() throws Exception {
    Path halfDone = Files.createDirectories(data().resolve("database/base"));
    Files.writeString(halfDone.resolve("1"), "half");
    Files.writeString(data().resolve("database/postmaster.pid"), "1\n/nowhere\n");
    awaitReady(start("first"));
    assertThat(data().resolve("initialised")).exists();
  }

  private Path data() {
    return folder.resolve("data");
  }

  private Path log(String name) {
    return folder.resolve(name + ".log");
  }

  private ProcessHandle server() throws IOException {
    return OrphanServer.pidOf(data().resolve("database/postmaster.pid"))
        .flatMap(ProcessHandle::of)
        .orElseThrow();
  }

  private Process start(String name) throws IOException {
    ProcessBuilder builder =
        new ProcessBuilder(
                ProcessHandle.current().info().command().orElse("java"),
                "-Xmx256m",
                "-jar",
                Path.of("target", "quarkus-app", "quarkus-run.jar").toString())
            .redirectErrorStream(true)
            .redirectOutput(log(name).toFile());
    builder.environment().put("POTLIFE_DATA", data().toString());
    builder.environment().put("QUARKUS_HTTP_PORT", String.valueOf(port));
    builder.environment().put("POTLIFE_DEMO", "false");
    builder.environment().remove("QUARKUS_DATASOURCE_JDBC_URL");
    Process process = builder.start();
    started.add(process);
    return process;
  }

  private void awaitReady(Process service) throws Exception {
    long deadline = System.nanoTime() + PATIENCE.toNanos();
    while (System.nanoTime() < deadline) {
      assertThat(service.isAlive()).as("the service ended").isTrue();
      try {
        if (get("/q/health/ready").statusCode() == 200) {
          return;
        }
      } catch (IOException notYet) {
        // it does not listen yet
      }
      Thread.sleep(200);
    }
    throw new AssertionError("not ready in " + PATIENCE);
  }

  private int putShop() throws Exception {
    HttpRequest request =
        request("/api/v1/plants/demo/shop")
            .header("Content-Type", "application/json")
            .PUT(BodyPublishers.ofString(Documents.SHOP))
            .build();
    return client.send(request, BodyHandlers.ofString()).statusCode();
  }

  private HttpResponse<String> get(String path) throws Exception {
    return client.send(request(path).build(), BodyHandlers.ofString());
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
        .timeout(Duration.ofSeconds(10));
  }
}
