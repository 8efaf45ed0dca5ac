package org.potlife.order;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.potlife.Documents;
import org.potlife.platform.json.JsonSettings;
import org.potlife.platform.problem.FieldError;
import org.potlife.shop.Shop;

class OrderCheckTest {

  private static final ObjectMapper MAPPER = JsonSettings.newMapper();
  private static final Shop SHOP = read(Documents.SHOP, Shop.class);

  @Test
  void theSmallOrderIsFine() {
    assertThat(OrderCheck.check(order(Documents.ORDER), "HC-2041", SHOP)).isEmpty();
  }

  @Test
  void anUnknownInkIsNamedWithTheInksThereAre() {
    assertThat(OrderCheck.check(order(bent("\"brick\"", "\"blood\"")), SHOP))
        .containsExactly(
            new FieldError(
                "/prints/0/colours/0/ink",
                "blood is not an ink of this plant; known are brick, sky"));
  }

  @Test
  void ofManyInksOnlySomeAreListed() {
    String inks =
        IntStream.range(10, 40)
            .mapToObj(
                i ->
                    "{\"id\":\"i"
                        + i
                        + "\",\"system\":\"wb\",\"swatch\":\"#000000\",\"lightness\":1,\"recipe\":[]}")
            .collect(Collectors.joining(","));
    Shop many =
        read(Documents.bent(Documents.SHOP, "\"inks\":[", "\"inks\":[" + inks + ","), Shop.class);
    assertThat(OrderCheck.check(order(bent("\"brick\"", "\"blood\"")), many).get(0).detail())
        .endsWith("i19, i20 and 20 more");
  }

  @Test
  void aWaterBasedInkMayGoIntoADischargePrint() {
    String colour = "{\"ink\":\"sky\",\"coveragePercent\":5,\"meshPerCm\":43,\"threadUm\":80},";
    assertThat(OrderCheck.check(order(bent("\"colours\":[", "\"colours\":[" + colour)), SHOP))
        .isEmpty();
  }

  @Test
  void aDischargePrintHasADischargeInk() {
    assertThat(pointers(bent("\"brick\"", "\"sky\""))).containsExactly("/prints/0/process");
  }

  @Test
  void aDischargeInkNeedsADischargePrint() {
    String waterBased =
        bent("\"process\":\"discharge\",\"trialPrint\":\"passed\"", "\"process\":\"water-based\"");
    assertThat(pointers(waterBased)).containsExactly("/prints/0/colours/0/ink");
  }

  @Test
  void aDesignIsPrintedOncePerPosition() {
    Order order = order(Documents.ORDER);
    Print print = order.prints().get(0);
    Order twice =
        new Order("A", "", 1, order.dueAt(), false, order.garments(), List.of(print, print));
    assertThat(OrderCheck.check(twice, SHOP))
        .extracting(FieldError::pointer)
        .containsExactly("/prints/1/position");
  }

  @Test
  void blanksCoverTheQuantity() {
    assertThat(pointers(bent("\"blanks\":252", "\"blanks\":239")))
        .containsExactly("/garments/blanks");
  }

  @Test
  void theReferenceIsTheOneInThePath() {
    assertThat(OrderCheck.check(order(Documents.ORDER), "HC-1", SHOP))
        .extracting(FieldError::pointer)
        .containsExactly("/reference");
  }

  @Test
  void aBatchNamesNoOrderTwice() {
    Order order = order(Documents.ORDER);
    assertThat(OrderCheck.checkAll(Arrays.asList(order, null, order), SHOP))
        .extracting(FieldError::pointer)
        .containsExactly("/2/reference");
    assertThat(OrderCheck.checkAll(List.of(), SHOP)).hasSize(1);
  }

  @Test
  void anOrderWithHolesIsBorne() {
    for (String holes :
        List.of(
            "{}",
            "{\"garments\":{},\"prints\":[null,{}]}",
            "{\"prints\":[{\"process\":\"discharge\",\"colours\":[null,{}]}]}",
            "{\"prints\":[{\"colours\":[]}]}")) {
      assertThat(OrderCheck.check(order(holes), "A", SHOP)).isEmpty();
    }
  }

  private static List<String> pointers(String order) {
    return OrderCheck.check(order(order), SHOP).stream().map(FieldError::pointer).toList();
  }

  private static String bent(String passage, String instead) {
    return Documents.bent(Documents.ORDER, passage, instead);
  }

  private static Order order(String text) {
    return read(text, Order.class);
  }

  private static <T> T read(String text, Class<T> type) {
    try {
      return MAPPER.readValue(text, type);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(e);
    }
  }
}
