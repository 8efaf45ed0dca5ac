package org.potlife.shop;

import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.potlife.dryer.Dryer;
import org.potlife.ink.InkRoom;
import org.potlife.platform.problem.FieldError;

/**
 * The rules across fields of a set-up. Bears missing values, which are reported elsewhere.
 *
 * <p>Only what cannot be meant is refused. A set-up that no longer serves an open order is fine:
 * the plan then lists the order as unplaced with its cause.
 */
public final class ShopCheck {

  private final Shop shop;
  private final Findings findings = new Findings();

  private ShopCheck(Shop shop) {
    this.shop = shop;
  }

  /** Everything that is wrong with the set-up, in the document's order. */
  public static List<FieldError> check(Shop shop) {
    ShopCheck check = new ShopCheck(shop);
    check.currency();
    check.presses();
    check.dryers();
    if (shop.screenRoom() != null) {
      new ScreenRoomCheck(shop.screenRoom(), shop, check.findings).run();
    }
    if (shop.inkRoom() != null) {
      check.inkRoom(shop.inkRoom());
    }
    new InkCheck(shop, check.findings).run();
    check.following(shop.settings().following());
    return check.findings.list();
  }

  private void currency() {
    try {
      if (shop.currency().length() == 3) {
        Currency.getInstance(shop.currency());
      }
    } catch (IllegalArgumentException e) {
      findings.add("/currency", "must be an ISO 4217 code like EUR, was " + shop.currency());
    }
  }

  private void presses() {
    findings.unique(shop.presses(), Press::id, "/presses", "id");
    Map<String, Dryer> dryers = byId(shop.dryers(), Dryer::id);
    Findings.each(
        shop.presses(),
        (press, i) -> {
          String pointer = "/presses/" + i;
          if (press.dryer() != null && !dryers.containsKey(press.dryer())) {
            findings.add(
                pointer + "/dryer",
                "names no dryer of this plant, was "
                    + press.dryer()
                    + "; there are "
                    + dryers.keySet().stream().sorted().collect(Collectors.joining(", ")));
          }
          if (Findings.above(press.minRatePerHour(), press.ratePerHour())) {
            findings.add(
                pointer + "/minRatePerHour",
                "must not be above ratePerHour, was "
                    + press.minRatePerHour()
                    + " over "
                    + press.ratePerHour());
          }
          ShiftCheck times = new ShiftCheck(findings, pointer);
          times.run(press.shifts(), press.closures());
          times.extra(press.extraShifts());
        });
  }

  private void dryers() {
    findings.unique(shop.dryers(), Dryer::id, "/dryers", "id");
    Findings.each(
        shop.dryers(),
        (dryer, i) -> {
          if (Findings.below(dryer.beltLengthMm(), dryer.heatedLengthMm())) {
            findings.add(
                "/dryers/" + i + "/beltLengthMm",
                "must be at least heatedLengthMm, was "
                    + dryer.beltLengthMm()
                    + " under "
                    + dryer.heatedLengthMm());
          }
        });
  }

  private void inkRoom(InkRoom room) {
    if (!Findings.above(room.containerG(), room.reserveG() + room.screenChargeG())) {
      findings.add(
          "/inkRoom/containerG",
          "must be above reserveG and screenChargeG together, else no batch can serve a run; was "
              + room.containerG());
    }
    if (Findings.above(room.scaleStepG(), room.containerG())) {
      findings.add("/inkRoom/scaleStepG", "must not be above containerG");
    }
    new ShiftCheck(findings, "/inkRoom").run(room.shifts(), room.closures());
  }

  private void following(Following following) {
    if (Findings.below(following.settleAtMostSeconds(), following.settleSeconds())) {
      findings.add(
          "/settings/following/settleAtMostSeconds",
          "must be at least settleSeconds, was "
              + following.settleAtMostSeconds()
              + " under "
              + following.settleSeconds());
    }
  }

  /** By name, without those that have none; of two with one name the first. */
  static <T> Map<String, T> byId(List<T> list, Function<T, String> id) {
    Map<String, T> map = new HashMap<>();
    Findings.each(
        list,
        (element, i) -> {
          if (id.apply(element) != null) {
            map.putIfAbsent(id.apply(element), element);
          }
        });
    return map;
  }
}
