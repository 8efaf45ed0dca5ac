package org.potlife.platform.db;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.potlife.Documents;
import org.potlife.testing.PackagedService;

/** The packaged service as a process, with its own PostgreSQL. */
class StartUpIT {

  private static final int PATIENCE_S = 120;

  @TempDir private Path folder;
  private PackagedService packaged;

  @BeforeEach
  void prepare() throws IOException {
    packaged = new PackagedService(folder, false);
  }

  @AfterEach
  void endWhatWasStarted() throws InterruptedException {
    packaged.end();
  }

  @Test
  void aSecondInstanceOnTheSameDataIsRefusedInOneLine() throws Exception {
    startReady("first");
    Process second = packaged.start("second");
    assertThat(second.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(second.exitValue()).isNotZero();
    assertThat(Files.readAllLines(packaged.log("second")))
        .singleElement()
        .asString()
        .contains("Another Potlife already runs on");
  }

  @Test
  void aStoppedServiceStopsItsDatabase() throws Exception {
    Process service = startReady("first");
    ProcessHandle server = server();
    service.destroy();
    assertThat(service.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(server.isAlive()).isFalse();
    assertThat(data().resolve("database/postmaster.pid")).doesNotExist();
  }

  @Test
  void aKilledServiceLeavesNoDatabaseBehind() throws Exception {
    Process service = startReady("first");
    ProcessHandle server = server();
    service.destroyForcibly();
    server.onExit().get(PATIENCE_S, TimeUnit.SECONDS);
    assertThat(server.isAlive()).isFalse();
  }

  @Test
  void whatWasStoredSurvivesAKillThatLeavesTheDatabaseRunning() throws Exception {
    Process service = startReady("first");
    assertThat(putShop()).isEqualTo(201);
    ProcessHandle orphan = server();
    service.children().forEach(ProcessHandle::destroyForcibly);
    service.destroyForcibly().waitFor();
    assertThat(orphan.isAlive()).isTrue();

    startReady("next");

    assertThat(orphan.isAlive()).isFalse();
    assertThat(packaged.send(packaged.request("/api/v1/plants/demo/shop")).statusCode())
        .isEqualTo(200);
  }

  @Test
  void aDatabaseThatIsKilledUnderTheServiceIsStartedAgain() throws Exception {
    startReady("first");
    assertThat(putShop()).isEqualTo(201);
    ProcessHandle killed = server();

    killed.destroyForcibly();
    killed.onExit().get(PATIENCE_S, TimeUnit.SECONDS);
    packaged.await("/q/health/ready", answer -> answer.statusCode() == 200);
    packaged.await("/api/v1/plants/demo/shop", answer -> answer.statusCode() == 200);

    assertThat(server().pid()).isNotEqualTo(killed.pid());
    assertThat(server().isAlive()).isTrue();
  }

  @Test
  void aFirstStartThatBrokeOffIsMadeAgain() throws Exception {
    Path halfDone = Files.createDirectories(data().resolve("database/base"));
    Files.writeString(halfDone.resolve("1"), "half");
    Files.writeString(data().resolve("database/postmaster.pid"), "1\n/nowhere\n");
    startReady("first");
    assertThat(data().resolve("initialised")).exists();
  }

  private Path data() {
    return packaged.data();
  }

  private ProcessHandle server() throws IOException {
    return OrphanServer.pidOf(data().resolve("database/postmaster.pid"))
        .flatMap(ProcessHandle::of)
        .orElseThrow();
  }

  private Process startReady(String name) throws Exception {
    Process service = packaged.start(name);
    packaged.await("/q/health/ready", answer -> answer.statusCode() == 200);
    return service;
  }

  private int putShop() throws Exception {
    return packaged
        .send(
            packaged
                .request("/api/v1/plants/demo/shop")
                .header("Content-Type", "application/json")
                .PUT(BodyPublishers.ofString(Documents.SHOP)))
        .statusCode();
  }
}
