package org.potlife.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.potlife.plan.PlanFixture;
import org.potlife.plan.PlannedPlant;
import org.potlife.plan.SettableClock;
import org.potlife.platform.Api;
import org.potlife.platform.Rows;

/** What ERP and press crew tell, and what becomes of orders and plans by it. */
@QuarkusTest
class FloorEventsTest {

  private static final OffsetDateTime EVENING = OffsetDateTime.parse("2026-11-30T16:30:00+01:00");

  @Inject Rows rows;

  @Inject Floor floor;

  @Inject Clock clock;

  private PlannedPlant plant;
  private JsonPath plan;
  private int told;

  @BeforeEach
  void aPlantWithAPlan() {
    SettableClock.set(EVENING);
    plant = PlannedPlant.ready();
    plan = plant.get(plant.published());
    told = 0;
  }

  @AfterEach
  void releaseTheClock() {
    SettableClock.release();
  }

  private Response post(String body) {
    return plant.api().post("/api/v1/plants/" + plant.id() + "/events", body);
  }

  private static String event(String id, String type, OffsetDateTime time, String data) {
    return ("{\"specversion\":\"1.0\",\"id\":\"%s\",\"source\":\"/press-room\","
            + "\"type\":\"org.potlife.%s\",\"time\":\"%s\",\"data\":%s}")
        .formatted(id, type, time, data.replace('\'', '"'));
  }

  private String outcome(String type, OffsetDateTime time, String data) {
    Response response = post(event("e" + told++, type, time, data));
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(200);
    return response.path("events[0].outcome");
  }

  private List<String> wrong(String type, String data) {
    Response response = post(event("e" + told++, type, EVENING, data));
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(422);
    return Api.pointers(response);
  }

  private String orderState(String reference) {
    return plant.api().get(plant.api().order(reference)).jsonPath().getString("state");
  }

  private OffsetDateTime time(int run, String field) {
    return OffsetDateTime.parse(plan.getString("runs[" + run + "]." + field));
  }

  private String run(int index) {
    return plan.getString("runs[" + index + "].id");
  }

  @Test
  void whatIsWrongInItselfIsRefusedWithItsPointer() {
    assertThat(wrong("run.counted", "{'run':'x','good':-1}"))
        .containsExactlyInAnyOrder("/data/good", "/data/spoiled");
    assertThat(wrong("press.down", "{'press':'P1','until':'2026-11-30T16:00:00+01:00'}"))
        .containsExactly("/data/until");
    assertThat(
            wrong(
                "shift.changed",
                "{'press':'P1','from':'2026-12-01T16:00:00+01:00',"
                    + "'to':'2026-12-01T15:00:00+01:00','staffed':true}"))
        .containsExactly("/data/to");
    assertThat(wrong("order.cancelled", "{}")).containsExactly("/data/reference");
    assertThat(
            wrong("order.placed", orderBody("N-1", "2026-12-04T12:00:00+01:00", "no-such-ink", 50)))
        .containsExactly("/data/prints/0/colours/0/ink");
    assertThat(rows.eventsOf(plant.id(), "/press-room")).isZero();
  }

  @Test
  void whatThePlantDoesNotKnowIsParked() {
    assertThat(outcome("run.started", EVENING, "{'run':'nobody:a:b:1'}")).isEqualTo("parked");
    assertThat(outcome("press.down", EVENING, "{'press':'P99'}")).isEqualTo("parked");
    assertThat(outcome("dryer.up", EVENING, "{'dryer':'D99'}")).isEqualTo("parked");
    assertThat(outcome("garments.received", EVENING, "{'order':'nobody','blanks':5}"))
        .isEqualTo("parked");
    assertThat(outcome("order.cancelled", EVENING, "{'reference':'nobody'}")).isEqualTo("parked");
    assertThat(
            outcome(
                "trial-print.passed",
                EVENING,
                "{'order':'" + firstOrder() + "','design':'nothing','position':'front'}"))
        .isEqualTo("parked");
  }

  private static String firstOrder() {
    return PlanFixture.orders().get(0).reference();
  }

  private static String ink() {
    return PlanFixture.orders().get(0).prints().get(0).colours().get(0).ink();
  }

  private static String process() {
    return PlanFixture.orders().get(0).prints().get(0).process().toString();
  }

  private static String orderBody(String reference, String due, String ink, int quantity) {
    return ("{'reference':'%s','dueAt':'%s','garments':{'style':'tee','colour':'navy',"
            + "'cottonPercent':100,'dye':'reactive','quantity':%d,"
            + "'availableFrom':'2026-12-01T06:00:00+01:00','lengthMm':720,'widthMm':560,"
            + "'massG':190},'prints':[{'design':'seal','position':'front','process':'%s',"
            + "'trialPrint':%s,'widthMm':200,'heightMm':200,'colours':[{'ink':'%s',"
            + "'coveragePercent':20,'meshPerCm':43,'threadUm':80}]}]}")
        .formatted(
            reference,
            due,
            quantity,
            process(),
            process().equals("discharge") ? "'passed'" : "'not-needed'",
            ink);
  }

  @Test
  void anOrderThatComesInAsAnEventIsPlacedChangedAndCancelledAndStandsInTheLogOnce() {
    SettableClock.set(EVENING.plusMinutes(5));
    String due = "2026-12-04T12:00:00+01:00";
    assertThat(outcome("order.placed", EVENING, orderBody("N-1", due, ink(), 50)))
        .isEqualTo("applied");
    assertThat(orderState("N-1")).isEqualTo("open");
    assertThat(rows.eventsOf(plant.id(), "/press-room")).isEqualTo(1);
    assertThat(rows.eventsOf(plant.id(), "/plants/" + plant.id() + "/orders"))
        .as("the service's own events tell of the orders that were put")
        .isEqualTo(PlanFixture.orders().size());

    outcome("order.changed", EVENING.plusMinutes(2), orderBody("N-1", due, ink(), 70));
    outcome("order.changed", EVENING.plusMinutes(1), orderBody("N-1", due, ink(), 60));
    JsonPath order = plant.api().get(plant.api().order("N-1")).jsonPath();
    assertThat(order.getInt("garments.quantity")).as("the older one came late").isEqualTo(70);

    assertThat(outcome("order.changed", EVENING, orderBody("N-2", due, ink(), 5)))
        .isEqualTo("parked");
    assertThat(outcome("order.cancelled", EVENING.plusMinutes(3), "{'reference':'N-1'}"))
        .isEqualTo("applied");
    assertThat(orderState("N-1")).isEqualTo("cancelled");
  }

  @Test
  void garmentsReceivedMoveTheOrderAndAnOlderReceiptDoesNotMoveItBack() {
    SettableClock.set(EVENING.plusMinutes(5));
    String order = firstOrder();
    String draft = plant.draft();
    outcome(
        "garments.received",
        EVENING.plusMinutes(2),
        "{'order':'" + order + "','blanks':7,'availableFrom':'2026-12-01T11:00:00+01:00'}");
    outcome("garments.received", EVENING, "{'order':'" + order + "','blanks':9}");

    JsonPath stored = plant.api().get(plant.api().order(order)).jsonPath();
    assertThat(stored.getInt("garments.blanks")).isEqualTo(7);
    assertThat(OffsetDateTime.parse(stored.getString("garments.availableFrom")))
        .isEqualTo("2026-12-01T11:00:00+01:00");
    assertThat(plant.get(draft).getBoolean("stale")).isTrue();
  }

  @Test
  void aRunThatIsToldMovesItsOrderAndThePlanThatFollows() {
    String order = plan.getString("runs[0].order");
    int quantity = plan.getInt("runs[0].quantity");
    SettableClock.set(time(0, "printEnd").plusHours(2));

    String late = event("s", "run.started", time(0, "setUpStart"), "{'run':'" + run(0) + "'}");
    assertThat(post(late).path("events[0].outcome").toString()).isEqualTo("applied");
    assertThat(post(late).path("events[0].outcome").toString()).isEqualTo("known");
    assertThat(orderState(order)).isEqualTo("started");
    assertThat(
            outcome(
                "order.cancelled",
                time(0, "printEnd").plusMinutes(1),
                "{'reference':'" + order + "'}"))
        .isEqualTo("parked");

    OffsetDateTime done = time(0, "printEnd").plusMinutes(40);
    String finish = "{'run':'" + run(0) + "','good':" + (quantity - 1) + ",'spoiled':1}";
    assertThat(outcome("run.finished", done, finish)).isEqualTo("applied");
    assertThat(outcome("run.finished", done.plusMinutes(5), finish))
        .as("it is over already")
        .isEqualTo("parked");
    assertThat(
            outcome(
                "run.counted",
                done.minusMinutes(50),
                "{'run':'" + run(0) + "','good':3,'spoiled':0}"))
        .as("a late count is noted")
        .isEqualTo("applied");

    RunReport report = report(List.of(order)).runs().get(0);
    assertThat(report.endedAt()).isEqualTo(done);
    assertThat(report.good()).isEqualTo(quantity - 1);

    JsonPath day =
        plant
            .api()
            .get("/api/v1/plants/" + plant.id() + "/days/" + done.toLocalDate() + "/close-out")
            .then()
            .statusCode(200)
            .extract()
            .jsonPath();
    String mine = "runs.find { it.run == '" + run(0) + "' }.";
    assertThat(day.getString(mine + "state")).isEqualTo("ended");
    assertThat(day.getInt(mine + "endMinutesLate")).isEqualTo(40);
    assertThat(day.getInt("total.pieces")).isEqualTo(quantity);
    assertThat(day.getFloat("total.qualityRatio")).isLessThan(1f).isGreaterThan(0.9f);
    assertThat(day.getList("carryOver.run")).doesNotContain(run(0)).isNotEmpty();
    plant
        .api()
        .get("/api/v1/plants/" + plant.id() + "/days/someday/close-out")
        .then()
        .statusCode(404);
  }

  private FloorReport report(List<String> orders) {
    return floor.reportAt(plant.id(), orders, clock.instant());
  }

  @Test
  void aPressIsDownFromTheTimeThatIsToldUntilItIsToldToBeUp() {
    String press = plan.getString("runs[0].press");
    OffsetDateTime now = time(0, "setUpStart").minusMinutes(30);
    SettableClock.set(now);
    assertThat(outcome("press.up", now.minusMinutes(20), "{'press':'" + press + "'}"))
        .isEqualTo("applied");
    String draft = plant.draft();
    outcome("press.down", now.minusMinutes(10), "{'press':'" + press + "','cause':'a chain tore'}");

    assertThat(report(List.of()).down())
        .extracting(Downtime::press, Downtime::cause, each -> each.from().toInstant())
        .containsExactly(tuple(press, "a chain tore", now.minusMinutes(10).toInstant()));
    assertThat(report(List.of()).down().get(0).to().toLocalDate())
        .as("for the rest of the day, as long as nobody tells")
        .isEqualTo(now.toLocalDate().plusDays(1));
    assertThat(plant.get(draft).getBoolean("stale")).isTrue();

    outcome("press.up", now.minusMinutes(2), "{'press':'" + press + "'}");
    assertThat(report(List.of()).down().get(0).to()).isEqualTo(now.minusMinutes(2));
  }
}
