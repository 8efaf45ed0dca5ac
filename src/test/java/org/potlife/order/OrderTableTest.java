package org.potlife.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.potlife.order.OrderTable.Wrong;
import org.potlife.platform.problem.FieldError;

/** Orders written as a table. */
class OrderTableTest {

  private static final String HEAD =
      "reference,dueAt,style,quantity,design,position,imageWidthMm,colours\n";

  private static OrderTable table(String rows) {
    return OrderTable.read(HEAD + rows, ZoneId.of("Europe/Berlin"));
  }

  @Test
  void rowsWithOneReferenceAreOneOrderWithAPrintEach() {
    OrderTable table =
        table(
            "A-1,2026-12-03 14:00,tee,120,crest,front,300,brick:22:43-80|bone:8.5:77-48\n"
                + "A-1,,,,roster,back,280,bone:30:43-80\n"
                + "A-2,2026-12-04T09:00:00+01:00,apron,40,loaf,front,200,chalk:5:43-80\n");
    assertThat(table.wrong()).isEmpty();
    assertThat(table.orders()).hasSize(2);
    var first = table.orders().get(0);
    assertThat(first.at("/dueAt").asText()).isEqualTo("2026-12-03T14:00:00+01:00");
    assertThat(first.at("/garments/quantity").isIntegralNumber()).isTrue();
    assertThat(first.at("/prints/0/colours/1/coveragePercent").asDouble()).isEqualTo(8.5);
    assertThat(first.at("/prints/1/design").asText()).isEqualTo("roster");
    assertThat(first.at("/prints/1/widthMm").asInt()).isEqualTo(280);
  }

  @Test
  void everyWrongCellIsNamedByItsRowAndColumn() {
    OrderTable table =
        table(
            "A-1,soon,tee,many,crest,front,300,brick:22\n"
                + ",2026-12-03 14:00,tee,1,crest,front,300,brick:22:43-80\n");
    assertThat(table.wrong())
        .extracting(Wrong::row, Wrong::column)
        .containsExactlyInAnyOrder(
            org.assertj.core.groups.Tuple.tuple(2, "dueAt"),
            org.assertj.core.groups.Tuple.tuple(2, "quantity"),
            org.assertj.core.groups.Tuple.tuple(2, "colours"),
            org.assertj.core.groups.Tuple.tuple(3, "reference"));
  }

  @Test
  void anErrorOfTheDocumentLeadsBackToItsCell() {
    OrderTable table =
        table(
            "A-1,2026-12-03 14:00,tee,120,crest,front,300,brick:22:43-80\n"
                + "A-1,,,,roster,back,280,bone:30:43-80\n");
    assertThat(table.locate(new FieldError("/0/prints/1/widthMm", "x")))
        .isEqualTo(new Wrong(3, "imageWidthMm", "x"));
    assertThat(table.locate(new FieldError("/0/garments/quantity", "x")))
        .isEqualTo(new Wrong(2, "quantity", "x"));
  }

  @Test
  void aTableOfACountryWithDecimalCommasIsReadToo() {
    OrderTable table =
        OrderTable.read(
            "\uFEFFreference;quantity;colours\nA-1;12;brick:8,5:43-80\n", ZoneId.of("UTC"));
    assertThat(table.wrong()).isEmpty();
    assertThat(table.orders().get(0).at("/prints/0/colours/0/coveragePercent").asDouble())
        .isEqualTo(8.5);
  }

  @Test
  void anUnknownColumnIsNoSilentLoss() {
    assertThat(OrderTable.read("reference,amount\nA-1,5\n", ZoneId.of("UTC")).wrong())
        .extracting(Wrong::column)
        .containsExactly("amount");
  }
}
