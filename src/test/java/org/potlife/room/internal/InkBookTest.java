package org.potlife.room.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.at;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.potlife.event.EventEffect;
import org.potlife.event.EventEffect.Verdict;
import org.potlife.event.ShopEvent;
import org.potlife.ink.InkLedger;
import org.potlife.ink.InkReport;
import org.potlife.ink.LearnedGrams;
import org.potlife.plan.PlannedPlant;
import org.potlife.plan.SettableClock;
import org.potlife.room.InkBook;
import org.potlife.room.InkContainer;

/** What the ink room tells, and the fate of every gram in its book. */
@QuarkusTest
class InkBookTest {

  @Inject @Any Instance<EventEffect<?>> effects;
  @Inject InkBook book;
  @Inject ObjectMapper mapper;

  private PlannedPlant plant;
  private String crestRun;

  @BeforeEach
  void aPlanInForce() {
    SettableClock.set(at(DAY.minusDays(1), "16:42"));
    plant = PlannedPlant.ready();
    String id = plant.published();
    crestRun = plant.get(id).getString("runs.find { it.inks.contains('brick') }.id");
  }

  @AfterEach
  void releaseTheClock() {
    SettableClock.release();
  }

  @Test
  void aDischargeBatchFromMixingToTheLastGram() {
    tell("batch.mixed", at("05:30"), "{'batch':'brick-1','massG':2415,'person':'Ada'}");
    tell("batch.activated", at("06:10"), "{'batch':'brick-1','agentG':145,'person':'Ada'}");
    tell("batch.ready", at("06:25"), "{'batch':'brick-1','person':'Bo'}");
    used(at("08:00"), 2000, 160, 300);
    tell("batch.discarded", at("14:20"), "{'batch':'brick-1','massG':380,'person':'Ada'}");

    InkContainer brick = book.find(plant.id(), "brick-1").orElseThrow();
    assertThat(brick.grams().mixedG()).isEqualTo(2415);
    assertThat(brick.grams().discardedG()).isEqualTo(380);
    assertThat(brick.grams().lostG()).as("the rest").isEqualTo(2415 + 145 - 2160 - 380);
    assertThat(brick.grams().leftG()).isZero();
    assertThat(brick.useBy()).isEqualTo(at("06:10").plusMinutes(480).toInstant());
    assertThat(brick.marks())
        .extracting(InkContainer.Mark::mark)
        .containsExactly("mixed", "activated", "ready", "used", "discarded");
    assertThat(brick.marks().get(2).person()).isEqualTo("Bo");
  }

  @Test
  void whatContradictsTheBookIsKeptAsideAndChangesNothing() {
    tell("batch.activated", at("06:10"), "{'batch':'brick-1'}");

    assertThat(contradiction("batch.activated", "{'batch':'brick-1'}")).contains("is activated");
    assertThat(contradiction("batch.mixed", "{'batch':'tar-9'}")).contains("has a batch tar-9");
    assertThat(contradiction("batch.activated", "{'batch':'chalk-1'}")).contains("takes no agent");
    assertThat(contradiction("ink.returned", "{'batch':'brick-1','massG':100}"))
        .contains("Only ink without agent goes back to stock");
    assertThat(contradiction("ink.stocked", "{'container':'B','ink':'brick','massG':100}"))
        .contains("no ink brick without agent");
    assertThat(
            contradiction(
                "run.ink-used", "{'batch':'brick-1','run':'x','massG':400000,'person':'Cy'}"))
        .contains("more went out than came in", "tell a count");
    InkContainer brick = book.find(plant.id(), "brick-1").orElseThrow();
    assertThat(brick.grams().printedG()).isZero();
    assertThat(book.find(plant.id(), "tar-9")).isEmpty();
  }

  @Test
  void inkWithoutAgentGoesBackToTheShelfAsAContainerOfItsOwn() {
    tell("batch.mixed", at("06:00"), "{'batch':'chalk-1'}");
    tell("ink.returned", at("15:00"), "{'batch':'chalk-1','massG':900,'person':'Ada'}");

    InkContainer chalk = book.find(plant.id(), "chalk-1").orElseThrow();
    InkContainer shelf = book.listStock(plant.id()).get(0);
    assertThat(chalk.grams().returnedG()).isEqualTo(shelf.grams().mixedG()).isEqualTo(900);
    assertThat(shelf.container()).isEqualTo("chalk-1-R");
    assertThat(shelf.origin()).isEqualTo("chalk-1");
    assertThat(shelf.lightOnly()).isFalse();
    InkReport report = book.reportAt(plant.id(), at("16:00").toInstant());
    assertThat(report.stock()).extracting("container").containsExactly("chalk-1-R");
    assertThat(report.recipeVersions()).containsEntry("chalk", 1);
  }

  @Test
  void whereThePlantKeepsThemLeftoversAreForLightGarmentsAlone() {
    String shop = RestAssured.get(plant.api().shop()).asString();
    plant
        .api()
        .put(
            plant.api().shop(),
            shop.replace("\"leftovers\":\"waste\"", "\"leftovers\":\"plain-for-light\""),
            "If-Match",
            RestAssured.get(plant.api().shop()).header("ETag"))
        .then()
        .statusCode(200);
    tell("batch.activated", at("06:10"), "{'batch':'brick-1'}");
    String back = "{'batch':'brick-1','massG':300,'ink':'chalk'}";

    assertThat(contradiction("ink.returned", back)).contains("runs until");
    assertThat(tell("ink.returned", at("15:00"), back).contradiction()).isNull();

    InkContainer shelf = book.listStock(plant.id()).get(0);
    assertThat(shelf.lightOnly()).isTrue();
    assertThat(shelf.origin()).isEqualTo("brick-1");
    assertThat(shelf.ink()).isEqualTo("chalk");
  }

  @Test
  void closedRunsTeachGramsPerPiece() {
    tell("batch.activated", at("06:10"), "{'batch':'brick-1'}");
    used(at("08:00"), 660, 0, 300);
    used(at("09:00"), 330, 0, 100);

    LearnedGrams learned =
        book.listLearned(plant.id()).stream()
            .filter(l -> l.ink().equals("brick"))
            .findFirst()
            .orElseThrow();
    // 660 g with 10 % loss on 300 pieces are 2 g, then 3 g with three tenths
    assertThat(learned.grams()).isCloseTo(2.3, within(1e-9));
    assertThat(learned.observations()).isEqualTo(2);
  }

  @Test
  void theBookOfRandomDaysCloses() {
    for (int seed = 1; seed <= 20; seed++) {
      Random random = new Random(seed);
      for (int i = 0; i < 15; i++) {
        tellSomething(random, seed * 100 + i);
      }
      everyGramIsAccountedFor();
    }
    assertThat(book.listBatches(plant.id(), at("00:00").toInstant())).hasSizeGreaterThan(5);
  }

  private void tellSomething(Random random, int number) {
    List<String> names = new ArrayList<>(List.of("chalk-1", "soot-1", "brick-1", "brick-2"));
    names.addAll(List.of("bone-1", "teal-1", "plum-1", "moss-1"));
    book.listStock(plant.id()).forEach(c -> names.add(c.container()));
    String name = names.get(random.nextInt(names.size()));
    int g = random.nextInt(1500) + 1;
    String batch = "{'batch':'" + name + "'";
    OffsetDateTime time = at("06:00").plusMinutes(number % 600);
    switch (random.nextInt(10)) {
      case 0 -> tell("batch.mixed", time, batch + ",'massG':" + g + "}");
      case 1, 2 -> tell("batch.activated", time, batch + "}");
      case 3, 4, 5 ->
          tell(
              "run.ink-used",
              time,
              batch + ",'run':'r','massG':" + g + ",'screensG':" + g / 9 + "}");
      case 6 ->
          tell("ink.returned", time, batch + ",'massG':" + g + ",'container':'C-" + number + "'}");
      case 7 -> tell("ink.counted", time, "{'container':'" + name + "','massG':" + g + "}");
      case 8 -> tell(random.nextBoolean() ? "batch.emptied" : "batch.discarded", time, batch + "}");
      default ->
          tell(
              "ink.stocked",
              time,
              "{'container':'S-" + number + "','ink':'soot','massG':" + g + "}");
    }
  }

  /** In each container, and between a batch and the containers that its ink went into. */
  private void everyGramIsAccountedFor() {
    List<InkContainer> all = new ArrayList<>(book.listBatches(plant.id(), at("00:00").toInstant()));
    all.addAll(book.listStock(plant.id()));
    for (InkContainer container : all) {
      InkLedger g = container.grams();
      assertThat(g.mixedG() + g.agentG() + g.foundG())
          .isEqualTo(
              g.printedG() + g.screensG() + g.returnedG() + g.discardedG() + g.lostG() + g.leftG());
      assertThat(g.leftG()).isNotNegative();
      if (container.goneAt() != null) {
        assertThat(g.leftG()).isZero();
      }
      int fromMarks =
          container.marks().stream()
              .filter(mark -> mark.mark().equals("used"))
              .mapToInt(InkContainer.Mark::massG)
              .sum();
      assertThat(g.printedG() + g.screensG()).isEqualTo(fromMarks);
      int onTheShelf =
          container.marks().stream()
              .filter(mark -> mark.mark().equals("returned"))
              .map(mark -> mark.remark().substring(3))
              .map(name -> book.find(plant.id(), name).orElseThrow())
              .mapToInt(shelf -> shelf.grams().mixedG())
              .sum();
      assertThat(g.returnedG()).isEqualTo(onTheShelf);
    }
  }

  private void used(OffsetDateTime time, int massG, int screensG, int pieces) {
    Verdict verdict =
        tell(
            "run.ink-used",
            time,
            "{'batch':'brick-1','run':'%s','massG':%d,'screensG':%d,'pieces':%d}"
                .formatted(crestRun, massG, screensG, pieces));
    assertThat(verdict.contradiction()).isNull();
  }

  private String contradiction(String type, String data) {
    return tell(type, at("07:00"), data).contradiction();
  }

  private Verdict tell(String type, OffsetDateTime time, String data) {
    EventEffect<?> effect =
        effects.stream().filter(e -> e.type().equals(type)).findFirst().orElseThrow();
    return QuarkusTransaction.requiringNew().call(() -> tell(effect, time, data));
  }

  private <D extends Record> Verdict tell(EventEffect<D> effect, OffsetDateTime time, String data)
      throws Exception {
    String json = data.replace('\'', '"');
    ShopEvent event =
        new ShopEvent(
            plant.id(), "/test", json, effect.type(), time.toInstant(), mapper.readTree(json));
    return effect.apply(event, mapper.treeToValue(event.data(), effect.data()));
  }
}
