package org.potlife.demo;

import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import jakarta.validation.Validation;
import jakarta.validation.ValidatorFactory;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.potlife.dryer.Belt;
import org.potlife.dryer.Dryer;
import org.potlife.ink.Component;
import org.potlife.ink.Component.Role;
import org.potlife.ink.Ink;
import org.potlife.ink.InkSystem;
import org.potlife.ink.Mesh;
import org.potlife.ink.Process;
import org.potlife.order.Colour;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.order.TrialPrint;
import org.potlife.screen.FrameStock;
import org.potlife.shop.Press;
import org.potlife.shop.Shop;

class DemoPlantTest {

  private static final LocalDate TUESDAY = LocalDate.of(2026, 12, 1);

  private final Shop shop = DemoPlant.shop();
  private final List<Order> orders = DemoPlant.orders(TUESDAY);

  @Test
  void thePlantHasTheRoomsOfASmallFactory() {
    assertThat(shop.presses()).hasSize(4);
    assertThat(shop.presses()).extracting(Press::stations).allMatch(n -> n >= 6 && n <= 14);
    assertThat(shop.dryers()).hasSize(2);
    for (Dryer dryer : shop.dryers()) {
      assertThat(shop.presses()).filteredOn(p -> p.dryer().equals(dryer.id())).hasSize(2);
    }
    assertThat(shop.screenRoom().cabinets()).hasSize(2);
    assertThat(shop.screenRoom().frames()).hasSize(4);
    assertThat(shop.inks()).hasSize(14);
    assertThat(shop.inkSystems()).extracting(InkSystem::potLifeMinutes).contains(480, 720);
  }

  @Test
  void everyRecipeSumsToAHundredAndKeepsItsSystemsLimits() {
    for (Ink ink : shop.inks()) {
      InkSystem system = shop.findInkSystem(ink.system()).orElseThrow();
      assertThat(percent(ink, Role.values())).as(ink.id()).isCloseTo(100, within(1e-9));
      assertThat(percent(ink, Role.RETARDER))
          .as(ink.id())
          .isLessThanOrEqualTo(system.retarderMaxPercent());
      assertThat(ink.agentPercent())
          .as(ink.id())
          .isBetween(system.agentMinPercent(), system.agentMaxPercent());
      assertThat(ink.agentPercent() > 0).as(ink.id()).isEqualTo(system.activated());
    }
  }

  @Test
  void aboutSixtyOrdersHaveOneToEightColours() {
    assertThat(orders).hasSizeBetween(55, 65);
    assertThat(orders).extracting(Order::reference).doesNotHaveDuplicates();
    List<Integer> colours = prints().map(p -> p.colours().size()).toList();
    assertThat(colours).contains(1, 8).allMatch(n -> n >= 1 && n <= 8);
    assertThat(orders).filteredOn(o -> o.prints().size() == 2).hasSizeGreaterThan(5);
  }

  @Test
  void everyInkIsKnownAndFitsTheProcessOfItsPrint() {
    assertThat(prints())
        .allSatisfy(
            print ->
                assertThat(print.colours())
                    .allSatisfy(
                        colour -> {
                          Ink ink = shop.findInk(colour.ink()).orElseThrow();
                          InkSystem system = shop.findInkSystem(ink.system()).orElseThrow();
                          assertThat(system.process()).isEqualTo(print.process());
                        }));
    assertThat(prints().flatMap(p -> p.colours().stream()).map(Colour::ink).collect(toSet()))
        .as("no ink is there for nothing")
        .hasSize(14);
  }

  @Test
  void everyMeshIsOwnedAndHasAnOpening() {
    Set<Mesh> owned = shop.screenRoom().frames().stream().map(DemoPlantTest::mesh).collect(toSet());
    assertThat(prints().flatMap(p -> p.colours().stream()))
        .allSatisfy(
            c -> assertThat(owned).contains(new Mesh(c.meshPerCm(), c.threadUm(), c.fabricUm())));
  }

  @Test
  void everyPrintFitsAPressAndItsDryer() {
    for (Order order : orders) {
      for (Print print : order.prints()) {
        assertThat(shop.presses())
            .as(order.reference())
            .anyMatch(press -> fits(press, order, print));
      }
    }
  }

  @Test
  void someStencilsAreKeptForDesignsThatComeAgain() {
    Set<String> designs = prints().map(Print::design).collect(toSet());
    assertThat(shop.screenRoom().kept())
        .isNotEmpty()
        .allSatisfy(k -> assertThat(designs).contains(k.design()));
  }

  @Test
  void theCasesWorthTalkingAboutAreThere() {
    assertThat(orders)
        .as("needs lots")
        .anyMatch(o -> o.garments().quantity() > 15 * 420)
        .as("garments come late")
        .anyMatch(o -> o.garments().availableFrom().toLocalDate().isAfter(TUESDAY))
        .as("cannot be kept")
        .anyMatch(o -> o.dueAt().isBefore(o.garments().availableFrom().plusHours(2)))
        .as("polyester does not discharge")
        .anyMatch(o -> discharges(o) && o.garments().cottonPercent() == 0)
        .as("trial print open")
        .anyMatch(o -> o.prints().get(0).trialPrint() == TrialPrint.OPEN);
    for (String ink : List.of("bone", "sea", "leaf")) {
      assertThat(lightnessOfClothUnder(ink)).as(ink).anyMatch(l -> l < 30).anyMatch(l -> l > 70);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "2026-12-01, 2026-11-30, 2026-12-04", // Tuesday to Friday
    "2026-12-05, 2026-12-04, 2026-12-10", // Saturday becomes Monday
    "2026-12-06, 2026-12-04, 2026-12-10", // Sunday becomes Monday
    "2026-12-10, 2026-12-09, 2026-12-15" // Thursday to Tuesday
  })
  void ordersLieOnTheNextFourWorkingDays(LocalDate first, LocalDate dayBefore, LocalDate last) {
    List<Order> moved = DemoPlant.orders(first);
    assertThat(moved.stream().map(o -> o.garments().availableFrom().toLocalDate()))
        .contains(dayBefore)
        .noneMatch(dayBefore::isAfter);
    assertThat(moved.stream().map(o -> o.dueAt().toLocalDate()))
        .contains(last)
        .noneMatch(last::isBefore);
  }

  @Test
  void timesCarryTheOffsetOfThePlantAlsoAcrossAChangeOfClocks() {
    List<Order> acrossTheChange = DemoPlant.orders(LocalDate.of(2026, 10, 22));
    assertThat(acrossTheChange)
        .extracting(Order::dueAt)
        .extracting(OffsetDateTime::getOffset)
        .extracting(Object::toString)
        .contains("+02:00", "+01:00");
  }

  @Test
  void shopAndOrdersAreValidAndSurviveTheRoundTripThroughJson() throws JsonProcessingException {
    ObjectMapper json =
        JsonMapper.builder()
            .addModule(new JavaTimeModule())
            .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
            .disable(DeserializationFeature.ADJUST_DATES_TO_CONTEXT_TIME_ZONE)
            .build();
    assertThat(json.readValue(json.writeValueAsString(shop), Shop.class)).isEqualTo(shop);
    try (ValidatorFactory factory = Validation.buildDefaultValidatorFactory()) {
      assertThat(factory.getValidator().validate(shop)).isEmpty();
      for (Order order : orders) {
        assertThat(json.readValue(json.writeValueAsString(order), Order.class)).isEqualTo(order);
        assertThat(factory.getValidator().validate(order)).isEmpty();
      }
    }
  }

  private Stream<Print> prints() {
    return orders.stream().flatMap(order -> order.prints().stream());
  }

  private boolean fits(Press press, Order order, Print print) {
    Dryer dryer = shop.findDryer(press.dryer()).orElseThrow();
    return print.colours().size() + print.flashes() <= press.stations()
        && print.widthMm() <= press.printWidthMm()
        && print.heightMm() <= press.printHeightMm()
        && press.processes().contains(print.process())
        && (press.garmentKinds().isEmpty()
            || press.garmentKinds().contains(order.garments().kind()))
        && Belt.lanes(dryer.beltWidthMm(), order.garments().widthMm(), dryer.gapMm()) > 0;
  }

  private Stream<Double> lightnessOfClothUnder(String ink) {
    return orders.stream()
        .filter(o -> o.prints().stream().anyMatch(p -> usesInk(p, ink)))
        .map(o -> o.garments().lightness());
  }

  private static boolean usesInk(Print print, String ink) {
    return print.colours().stream().anyMatch(c -> c.ink().equals(ink));
  }

  private static boolean discharges(Order order) {
    return order.prints().get(0).process() == Process.DISCHARGE;
  }

  private static double percent(Ink ink, Role... roles) {
    return ink.recipe().stream()
        .filter(c -> List.of(roles).contains(c.role()))
        .mapToDouble(Component::percent)
        .sum();
  }

  private static Mesh mesh(FrameStock stock) {
    return new Mesh(stock.meshPerCm(), stock.threadUm(), null);
  }
}
