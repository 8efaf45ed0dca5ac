package org.potlife.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.testing.SmallShop.at;
import static org.potlife.testing.SmallShop.daily;

import jakarta.validation.Validation;
import jakarta.validation.Validator;
import jakarta.validation.ValidatorFactory;
import java.time.LocalTime;
import org.junit.jupiter.api.Test;
import org.potlife.ink.Process;
import org.potlife.order.Order;
import org.potlife.order.TrialPrint;
import org.potlife.shop.Press;
import org.potlife.shop.Shop;

class SmallShopTest {

  @Test
  void theShopThatNobodyDescribedHasOnePressAndIsValid() {
    Shop shop = SmallShop.shop().build();
    assertThat(shop.presses()).extracting(Press::id).containsExactly("P1");
    assertThat(shop.findInk("brick")).isPresent();
    assertThat(shop.findDryer(shop.presses().get(0).dryer())).isPresent();
    assertThat(shop.presses().get(0).shifts()).containsExactly(daily("06:00-22:00"));
    assertValid(shop);
  }

  @Test
  void namingAPressChangesItAndANewNameAddsOne() {
    Shop shop =
        SmallShop.shop()
            .press("P1", p -> p.stations(8))
            .press("P2", p -> p.ratePerHour(90).shifts(daily("06:00-14:00", "10:00-10:30")))
            .build();
    assertThat(shop.presses()).extracting(Press::stations).containsExactly(8, 6);
    assertThat(shop.presses().get(1).shifts().get(0).breaks().get(0).from())
        .isEqualTo(LocalTime.of(10, 0));
    assertValid(shop);
  }

  @Test
  void anOrderReadsLikeItsPackingSlip() {
    Order order =
        SmallOrder.order("A-1")
            .quantity(240)
            .due(1, "14:00")
            .print("crest", "front")
            .discharge()
            .colour("brick", 22)
            .print("number", "back")
            .build();
    assertThat(order.dueAt()).isEqualTo(at(1, "14:00")).hasToString("2026-12-02T14:00+01:00");
    assertThat(order.prints())
        .extracting("process")
        .containsExactly(Process.DISCHARGE, Process.WATER_BASED);
    assertThat(order.prints())
        .extracting("trialPrint")
        .containsExactly(TrialPrint.PASSED, TrialPrint.NOT_NEEDED);
    assertThat(order.prints().get(1).colours()).extracting("ink").containsExactly("white");
    assertValid(order);
    assertValid(SmallOrder.order("A-2").build());
  }

  private static void assertValid(Object value) {
    try (ValidatorFactory factory = Validation.buildDefaultValidatorFactory()) {
      Validator validator = factory.getValidator();
      assertThat(validator.validate(value)).isEmpty();
    }
  }
}
