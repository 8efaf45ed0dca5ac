package org.potlife.floor.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import org.potlife.event.EventEffect.Verdict;
import org.potlife.event.ShopEvent;
import org.potlife.floor.Downtime;
import org.potlife.platform.problem.FieldError;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;

/** Presses and dryers of the set-up, and whether they are told to be down. */
@ApplicationScoped
class Machines {

  private final Shops shops;
  private final ToldHours hours;

  @Inject
  Machines(Shops shops, ToldHours hours) {
    this.shops = shops;
    this.hours = hours;
  }

  static List<FieldError> checkUntil(ShopEvent event, OffsetDateTime until) {
    return until == null || until.toInstant().isAfter(event.time())
        ? List.of()
        : List.of(new FieldError("/until", "must be after the event's time, was " + until));
  }

  boolean isPressKnown(String plant, String press) {
    return shop(plant).findPress(press).isPresent();
  }

  boolean isDryerKnown(String plant, String dryer) {
    return shop(plant).findDryer(dryer).isPresent();
  }

  Verdict unknownPress(String plant, String press) {
    return Verdict.parked(
        "The plant has no press %s; it has %s."
            .formatted(press, shop(plant).presses().stream().map(each -> each.id()).toList()));
  }

  Verdict unknownDryer(String plant, String dryer) {
    return Verdict.parked(
        "The plant has no dryer %s; it has %s."
            .formatted(dryer, shop(plant).dryers().stream().map(each -> each.id()).toList()));
  }

  boolean isPressDown(String plant, String press, Instant at) {
    return down(plant, at).stream().anyMatch(each -> press.equals(each.press()));
  }

  boolean isDryerDown(String plant, String dryer, Instant at) {
    return down(plant, at).stream().anyMatch(each -> dryer.equals(each.dryer()));
  }

  private List<Downtime> down(String plant, Instant at) {
    return hours.down(plant, at).stream()
        .filter(each -> !each.from().toInstant().isAfter(at) && each.to().toInstant().isAfter(at))
        .toList();
  }

  private Shop shop(String plant) {
    return shops.getShop(plant).shop();
  }
}
