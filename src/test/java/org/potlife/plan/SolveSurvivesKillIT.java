package org.potlife.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.potlife.testing.PackagedService;

/** The packaged service, ended in the middle of a search. */
class SolveSurvivesKillIT {

  private static final String FIRST_PLAN = "/api/v1/plants/demo/plans/demo-1";

  @TempDir private Path folder;
  private PackagedService service;

  @BeforeEach
  void prepare() throws IOException {
    service = new PackagedService(folder, true);
  }

  @AfterEach
  void endWhatWasStarted() throws InterruptedException {
    service.end();
  }

  @Test
  void aPlanIsSolvedAlthoughTheServiceWasKilledInTheMiddle() throws Exception {
    Process first = service.start("first");
    await("\"state\":\"solving\"");
    first.destroyForcibly().waitFor();

    service.start("next");
    await("\"state\":");
    long begun = System.nanoTime();
    String plan = await("\"finishedAt\":");

    assertThat(plan).contains("\"runs\":[{");
    // found dead within a minute; the search itself takes ten seconds
    assertThat(Duration.ofNanos(System.nanoTime() - begun)).isLessThan(Duration.ofSeconds(80));
  }

  @Test
  void aPlanIsSolvedAfterAnOrderlyStopInTheMiddle() throws Exception {
    Process first = service.start("first");
    await("\"state\":\"solving\"");
    first.destroy();
    assertThat(first.waitFor(60, TimeUnit.SECONDS)).isTrue();

    service.start("next");

    assertThat(await("\"finishedAt\":")).contains("\"runs\":[{");
  }

  /** The first plan once its document contains a passage. */
  private String await(String passage) throws InterruptedException {
    return service.await(FIRST_PLAN, answer -> answer.body().contains(passage));
  }
}
