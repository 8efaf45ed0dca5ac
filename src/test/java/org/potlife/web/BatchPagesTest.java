package org.potlife.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.at;

import com.google.zxing.ReaderException;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.potlife.plan.PlannedPlant;
import org.potlife.plan.SettableClock;

/** The label on a bucket, and the page that it leads to. */
@QuarkusTest
class BatchPagesTest {

  private static final Pattern CODE =
      Pattern.compile("<svg class=\"qr\" viewBox=\"0 0 (\\d+) .*?<path d=\"([^\"]+)\"");

  private PlannedPlant plant;
  private String plan;

  @BeforeEach
  void aPlanInForce() {
    SettableClock.set(at(DAY.minusDays(1), "16:42"));
    plant = PlannedPlant.ready();
    plan = plant.published();
  }

  @AfterEach
  void releaseTheClock() {
    SettableClock.release();
  }

  @Test
  void theCodeOfALabelLeadsToTheBatchsPage() throws ReaderException {
    String html = page("labels?batch=brick-2").asString();

    Matcher code = CODE.matcher(html);
    assertThat(code.find()).isTrue();
    String address = QrReader.read(Integer.parseInt(code.group(1)), code.group(2));
    assertThat(address)
        .endsWith("/plants/" + plant.id() + "/plans/" + plan + "/pages/batches/brick-2");
    assertThat(given().get(address).asString()).contains("Batch brick-2");
    assertThat(code.find()).as("one label").isFalse();
  }

  @Test
  void thePageSaysWhatToWeighForWhomAndWhatBecomesOfIt() {
    String html = page("batches/brick-2").asString();

    assertThat(html).contains("brick pigment", "LR-77", "agent, 6 %", "formaldehyde");
    assertThat(html).contains("g by formula: 300 × 380 mm × 22 % ×", "The fate of its grams");
    assertThat(html).doesNotContain("NOT_FOUND", "<Yard>");
  }

  @Test
  void everyBatchOfTheDayHasALabel() {
    String html = page("labels?day=" + DAY + "&size=label").asString();

    assertThat(html).contains("class=\"one-label\"", "brick-1", "chalk-1", "<dd>no agent</dd>");
    assertThat(CODE.matcher(html).results()).hasSize(12);
    assertThat(page("labels?day=" + DAY.plusDays(5)).asString()).contains("No ink is mixed");
  }

  @Test
  void aBatchThatThePlanDoesNotHaveIsNotFound() {
    Response page = page("batches/tar-1");

    assertThat(page.statusCode()).isEqualTo(404);
    assertThat(page.asString()).contains("The plan does not have this");
  }

  private Response page(String name) {
    return given().get("/plants/" + plant.id() + "/plans/" + plan + "/pages/" + name);
  }
}
