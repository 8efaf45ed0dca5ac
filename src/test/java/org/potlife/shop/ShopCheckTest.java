package org.potlife.shop;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.potlife.Documents;
import org.potlife.platform.json.JsonSettings;
import org.potlife.platform.problem.FieldError;

class ShopCheckTest {

  private static final ObjectMapper MAPPER = JsonSettings.newMapper();

  @Test
  void theSmallShopIsFine() {
    assertThat(findings(Documents.SHOP)).isEmpty();
  }

  @Test
  void aRecipeOf97PercentIsRefusedWithItsSum() {
    finds("\"percent\":88", "\"percent\":85", "/inks/0/recipe", "sums to 97 %");
  }

  @Test
  void aRecipeWithinAHundredthOfAPercentIsFine() {
    assertThat(findings(bent("\"percent\":88", "\"percent\":87.99"))).isEmpty();
    finds("\"percent\":88", "\"percent\":87.98", "/inks/0/recipe", "sums to 99.98 %");
  }

  @Test
  void retarderKeepsToTheSystemsLimit() {
    String shop =
        bent("\"percent\":88", "\"percent\":85").replace("\"percent\":3", "\"percent\":6");
    assertThat(findings(shop))
        .singleElement()
        .satisfies(e -> says(e, "/inks/0/recipe", "at most 5 %"));
  }

  @Test
  void agentKeepsToTheSystemsLimits() {
    finds("\"agentPercent\":6", "\"agentPercent\":4", "/inks/0/agentPercent", "between 5 and 8");
    finds("\"agentPercent\":6", "\"agentPercent\":9", "/inks/0/agentPercent", "was 9");
    finds("\"agentPercent\":6,", "", "/inks/0/agentPercent", "was 0");
    finds(
        "\"lightness\":70",
        "\"lightness\":70,\"agentPercent\":6",
        "/inks/1/agentPercent",
        "must be 0");
  }

  @Test
  void namesThatPointNowhereAreRefused() {
    finds("\"dryer\":\"D1\"", "\"dryer\":\"D9\"", "/presses/0/dryer", "there are D1");
    finds("\"system\":\"wb\"", "\"system\":\"xx\"", "/inks/1/system", "there are dc, wb");
    finds("\"ink\":\"brick\"", "\"ink\":\"blood\"", "/screenRoom/kept/0/ink", "blood");
  }

  @Test
  void namesAreUnique() {
    finds("\"id\":\"sky\"", "\"id\":\"brick\"", "/inks/1/id", "brick occurs before");
  }

  @Test
  void aBeltIsAtLeastAsLongAsItsTunnel() {
    finds("\"beltLengthMm\":5000", "\"beltLengthMm\":2999", "/dryers/0/beltLengthMm", "at least");
  }

  @Test
  void theLeastRateIsNotAboveTheRate() {
    finds(
        "\"ratePerHour\":400",
        "\"ratePerHour\":400,\"minRatePerHour\":401",
        "/presses/0/minRatePerHour",
        "401 over 400");
  }

  @Test
  void aStoreMoreHumidThanTheEmulsionBearsIsRefused() {
    finds(
        "\"storeHumidityPercent\":35",
        "\"storeHumidityPercent\":61",
        "/screenRoom/storeHumidityPercent",
        "61 over 60");
  }

  @Test
  void breaksLieWithinTheirShift() {
    finds("\"to\":\"09:15\"", "\"to\":\"14:01\"", "/presses/0/shifts/0/breaks/0", "06:00 to 14:00");
    finds("\"from\":\"09:00\"", "\"from\":\"05:00\"", "/presses/0/shifts/0/breaks/0", "05:00");
  }

  @Test
  void aNightShiftHoldsABreakBehindMidnight() {
    String night =
        bent(
            "\"from\":\"06:00\",\"to\":\"14:00\",\n     \"breaks\":[{\"from\":\"09:00\",\"to\":\"09:15\"}]",
            "\"from\":\"22:00\",\"to\":\"06:00\",\"breaks\":[{\"from\":\"23:50\",\"to\":\"00:20\"},"
                + "{\"from\":\"02:00\",\"to\":\"02:15\"}]");
    assertThat(findings(night)).isEmpty();
  }

  @Test
  void aClosureEndsAfterItBegins() {
    finds(
        "\"ratePerHour\":400",
        "\"ratePerHour\":400,\"closures\":[{\"from\":\"2026-12-02T06:00:00+01:00\","
            + "\"to\":\"2026-12-02T05:00:00Z\"}]",
        "/presses/0/closures/0/to",
        "after from");
  }

  @Test
  void keptStencilsHaveFramesOfTheirMesh() {
    finds("\"count\":20", "\"count\":0", "/screenRoom/frames/0/count", "at least the 1");
    finds(
        "\"ink\":\"brick\",\"meshPerCm\":43",
        "\"ink\":\"brick\",\"meshPerCm\":54",
        "/screenRoom/kept/0",
        "54 threads/cm of 80 um");
    finds(
        "\"frames\":[",
        "\"frames\":[{\"meshPerCm\":43.0,\"threadUm\":80.0,\"count\":3},",
        "/screenRoom/frames/1",
        "listed before");
  }

  @Test
  void theCurrencyIsOne() {
    finds("\"timeZone\"", "\"currency\":\"XQX\",\"timeZone\"", "/currency", "ISO 4217");
  }

  @Test
  void aSetUpWithHolesIsBorne() throws JsonProcessingException {
    assertThat(ShopCheck.check(MAPPER.readValue("{}", Shop.class))).isEmpty();
    assertThat(
            ShopCheck.check(
                MAPPER.readValue("{\"presses\":[null,{}],\"inks\":[{}, null]}", Shop.class)))
        .isEmpty();
    assertThat(ShopCheck.check(MAPPER.readValue("{\"screenRoom\":{},\"inkRoom\":{}}", Shop.class)))
        .isEmpty();
  }

  private static void finds(String passage, String instead, String pointer, String words) {
    assertThat(findings(bent(passage, instead)))
        .singleElement()
        .satisfies(error -> says(error, pointer, words));
  }

  private static void says(FieldError error, String pointer, String words) {
    assertThat(error.pointer()).isEqualTo(pointer);
    assertThat(error.detail()).contains(words);
  }

  private static String bent(String passage, String instead) {
    return Documents.bent(Documents.SHOP, passage, instead);
  }

  private static List<FieldError> findings(String shop) {
    try {
      return ShopCheck.check(MAPPER.readValue(shop, Shop.class));
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(e);
    }
  }
}
