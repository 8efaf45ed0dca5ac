package org.potlife.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.plan.PlanFixture.at;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.microsoft.playwright.options.ColorScheme;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.potlife.order.Order;
import org.potlife.plan.PlanFixture;
import org.potlife.plan.PlannedPlant;
import org.potlife.platform.Api;
import org.potlife.platform.json.JsonSettings;
import org.potlife.testing.BrowserTest;

/** The orders' page of a new plant, and of one with very many orders. */
@QuarkusTest
class OrdersPageTest extends BrowserTest {

  private static final ObjectMapper MAPPER = JsonSettings.newMapper();

  @BeforeEach
  void openTheWindow() {
    look(ColorScheme.LIGHT);
  }

  /** So many orders beside the fixture's four, each due a minute after the one before. */
  private static PlannedPlant plantWith(int many) throws JsonProcessingException {
    PlannedPlant plant = PlannedPlant.ready();
    Order like = PlanFixture.orders().get(1);
    for (int sent = 0; sent < many; sent += 500) {
      List<Order> part =
          IntStream.range(sent, sent + 500)
              .mapToObj(
                  i ->
                      new Order(
                          "N-%04d".formatted(i),
                          "Customer %04d".formatted(i),
                          like.priority(),
                          at("12:00").plusDays(10).plusMinutes(i),
                          null,
                          like.garments(),
                          like.prints()))
              .toList();
      plant
          .api()
          .post(
              plant.api().orders(),
              MAPPER.writeValueAsString(part),
              "Idempotency-Key",
              "part-" + sent)
          .then()
          .statusCode(200);
    }
    return plant;
  }

  @Test
  void aPlantWithoutOrdersIsToldHowTheyCome() {
    Api plant = Api.withShop();
    page.navigate("/plants/" + plant.plant() + "/orders");

    assertThat(page.locator("main [role=status]")).hasText("There is no order in this state.");
    assertThat(page.locator(".empty a[href$='state=all']")).isVisible();
    assertThat(page.locator(".empty")).containsText("take in a table");
    window.walkTo(".empty a[href$='order-table']");
    page.keyboard().press("Enter");
    assertThat(page.locator("main h1")).hasText("Take in a table");
    assertThat(window.complaints()).isEmpty();
  }

  @Test
  void amongTwoThousandOrdersOneIsFoundByTheKeyboardAlone() throws JsonProcessingException {
    PlannedPlant plant = plantWith(2000);
    page.navigate("/plants/" + plant.id() + "/orders");

    assertThat(page.locator("main [role=status]")).containsText("1 to 50 of 2004");
    assertThat(page.locator("main tbody tr")).hasCount(50);
    assertThat(page.locator("nav[aria-label=Pages]")).containsText("Page 1 of 41");
    window.walkTo("a[rel=next]");
    page.keyboard().press("Enter");
    assertThat(page.locator("main [role=status]")).containsText("51 to 100 of 2004");
    window.read("orders");

    window.walkTo("input[name=text]");
    page.keyboard().type("customer 1234");
    page.keyboard().press("Enter");
    assertThat(page.locator("main tbody tr")).hasCount(1);
    assertThat(page.locator("main tbody th")).containsText("N-1234");

    window.walkTo("select[name=state]");
    page.keyboard().type("finished");
    page.keyboard().press("Tab");
    window.walkTo("form[role=search] button");
    page.keyboard().press("Enter");
    assertThat(page.locator("main [role=status]")).hasText("No order fits what is looked for.");
    window.walkTo(".empty a");
    page.keyboard().press("Enter");
    assertThat(page.locator("main [role=status]")).containsText("of 2004");
    assertThat(window.complaints()).isEmpty();
  }

  @Test
  void aPageBeyondTheEndIsTheLastOne() throws JsonProcessingException {
    PlannedPlant plant = plantWith(500);
    page.navigate("/plants/" + plant.id() + "/orders?state=open&from=99999");

    assertThat(page.locator("main [role=status]")).containsText("501 to 504 of 504");
    assertThat(page.locator("main tbody tr")).hasCount(4);
    assertThat(page.locator("a[rel=next]")).hasCount(0);
    page.navigate("/plants/" + plant.id() + "/orders?from=-7");
    assertThat(page.locator("main [role=status]")).containsText("1 to 50 of 504");
  }
}
