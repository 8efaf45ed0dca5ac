package org.potlife.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packaged service, ended in the middle of a search. */
class SolveSurvivesKillIT {

  private static final Duration PATIENCE = Duration.ofSeconds(120);
  private static final String FIRST_PLAN = "/api/v1/plants/demo/plans/demo-1";

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
  void aPlanIsSolvedAlthoughTheServiceWasKilledInTheMiddle() throws Exception {
    Process service = start("first");
    await("\"state\":\"solving\"");
    service.destroyForcibly().waitFor();

    start("next");
    await("\"state\":");
    long begun = System.nanoTime();
    String plan = await("\"finishedAt\":");

    assertThat(plan).contains("\"runs\":[{");
    // found dead within a minute; the search itself takes ten seconds
    assertThat(Duration.ofNanos(System.nanoTime() - begun)).isLessThan(Duration.ofSeconds(80));
  }

  @Test
  void aPlanIsSolvedAfterAnOrderlyStopInTheMiddle() throws Exception {
    Process service = start("first");
    await("\"state\":\"solving\"");
    service.destroy();
    assertThat(service.waitFor(60, TimeUnit.SECONDS)).isTrue();

    start("next");

    assertThat(await("\"finishedAt\":")).contains("\"runs\":[{");
  }

  private Process start(String name) throws IOException {
    ProcessBuilder builder =
        new ProcessBuilder(
                ProcessHandle.current().info().command().orElse("java"),
                "-Xmx384m",
                "-jar",
                Path.of("target", "quarkus-app", "quarkus-run.jar").toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve(name + ".log").toFile());
    builder.environment().put("POTLIFE_DATA", folder.resolve("data").toString());
    builder.environment().put("QUARKUS_HTTP_PORT", String.valueOf(port));
    builder.environment().remove("QUARKUS_DATASOURCE_JDBC_URL");
    Process process = builder.start();
    started.add(process);
    return process;
  }

  /** The first plan once its document contains a passage. */
  private String await(String passage) throws InterruptedException {
    long deadline = System.nanoTime() + PATIENCE.toNanos();
    while (System.nanoTime() < deadline) {
      try {
        HttpRequest request =
            HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + FIRST_PLAN))
                .timeout(Duration.ofSeconds(10))
                .build();
        String plan = client.send(request, BodyHandlers.ofString()).body();
        if (plan.contains(passage)) {
          return plan;
        }
      } catch (IOException notYet) {
        // it does not listen yet
      }
      Thread.sleep(200);
    }
    throw new AssertionError("no " + passage + " within " + PATIENCE);
  }
}
