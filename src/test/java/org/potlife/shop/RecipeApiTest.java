package org.potlife.shop;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.potlife.plan.PlannedPlant;

/** The recipes that an ink has had. */
@QuarkusTest
class RecipeApiTest {

  private PlannedPlant plant;

  @BeforeEach
  void aPlant() {
    plant = PlannedPlant.ready();
  }

  @Test
  void everyChangeOfARecipeIsAVersionAndTheOldOnesStayReadable() {
    change("\"percent\":17.0", "\"percent\":16.0", "\"percent\":80.0", "\"percent\":81.0");

    JsonPath brick = recipes("brick").then().statusCode(200).extract().jsonPath();
    assertThat(brick.getList("recipes.version", Integer.class)).containsExactly(2, 1);
    assertThat(brick.getList("recipes[0].recipe.percent", Double.class)).contains(16.0, 81.0);
    assertThat(brick.getList("recipes[1].recipe.percent", Double.class)).contains(17.0, 80.0);
    assertThat(brick.getString("recipes[0].since")).isNotBlank();
    JsonPath chalk = recipes("chalk").jsonPath();
    assertThat(chalk.getList("recipes.version", Integer.class)).isEqualTo(List.of(1));
  }

  @Test
  void aChangeOfSomethingElseIsNoVersion() {
    change("\"screenChargeG\":80", "\"screenChargeG\":90");

    assertThat(recipes("brick").jsonPath().getList("recipes.version", Integer.class))
        .isEqualTo(List.of(1));
  }

  @Test
  void anInkThatThePlantNeverHadIsNotFound() {
    assertThat(recipes("tar").statusCode()).isEqualTo(404);
  }

  private Response recipes(String ink) {
    return given().get("/api/v1/plants/" + plant.id() + "/inks/" + ink + "/recipes");
  }

  private void change(String... fromTo) {
    Response shop = given().get(plant.api().shop());
    String body = shop.asString();
    for (int i = 0; i < fromTo.length; i += 2) {
      assertThat(body).contains(fromTo[i]);
      body = body.replace(fromTo[i], fromTo[i + 1]);
    }
    given()
        .contentType(ContentType.JSON)
        .header("If-Match", shop.header("ETag"))
        .body(body)
        .put(plant.api().shop())
        .then()
        .statusCode(200);
  }
}
