package org.potlife.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.potlife.testing.PackagedService;

/** The packaged service, ended in the middle of a search or before one. */
class SolveSurvivesKillIT {

  private static final String ORDERS = "/api/v1/plants/demo/orders";
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

  @Test
  void aChangeIsFollowedAlthoughTheServiceWasKilledBeforeItHadSettled() throws Exception {
    Process first = service.start("first");
    await("\"state\":\"published\"");
    String orders = service.send(service.request(ORDERS + "?limit=1")).body();
    Matcher reference = Pattern.compile("\"reference\":\"([^\"]+)\"").matcher(orders);
    assertThat(reference.find()).isTrue();
    int status =
        service.send(service.request(ORDERS + "/" + reference.group(1)).DELETE()).statusCode();
    assertThat(status).isEqualTo(204);
    first.destroyForcibly().waitFor();

    service.start("next");

    String draft =
        service.await(
            "/api/v1/plants/demo/plans/demo-2",
            answer -> answer.body().contains("\"state\":\"draft\""));
    assertThat(draft).contains("\"origin\":\"events\"", "\"stale\":false", "\"stability\":{");
    assertThat(draft).doesNotContain("\"order\":\"" + reference.group(1) + "\"");
  }

  /** The first plan once its document contains a passage. */
  private String await(String passage) throws InterruptedException {
    return service.await(FIRST_PLAN, answer -> answer.body().contains(passage));
  }
}
