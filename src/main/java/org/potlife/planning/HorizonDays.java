package org.potlife.planning;

import org.potlife.order.Order;
import org.potlife.shop.Press;
import org.potlife.shop.Shift;
import org.potlife.shop.Shop;

/** How far a plan must reach: the plant's setting, or longer when the orders need it. */
final class HorizonDays {

  private static final int MOST_DAYS = 180;

  /** Rough hours of set-up per screen and per print; common practice, no source. */
  private static final double HOURS_PER_SCREEN = 0.2;

  private static final double HOURS_PER_PRINT = 0.5;

  /** Share of its own rate that a press reaches beside others on the dryer; a guess to be safe. */
  private static final double SHARE_OF_RATE = 0.5;

  /** Room for what does not fit together, as a multiple of the work. */
  private static final double ROOM = 2;

  private static final int SPARE_DAYS = 3;

  private HorizonDays() {}

  static int needed(PlanRequest request) {
    Shop shop = request.shop();
    double hoursPerWeek = 0;
    double piecesPerHour = 0;
    for (Press press : shop.presses()) {
      if (press.inService()) {
        double hours = press.shifts().stream().mapToDouble(HorizonDays::hoursPerWeek).sum();
        hoursPerWeek += hours;
        piecesPerHour += press.ratePerHour() * hours;
      }
    }
    if (hoursPerWeek <= 0) {
      return shop.settings().horizonDays();
    }
    double meanRate = piecesPerHour / hoursPerWeek;
    double hours = 0;
    for (Order order : request.orders()) {
      int screens = order.prints().stream().mapToInt(print -> print.colours().size()).sum();
      hours += order.prints().size() * order.garments().quantity() / (meanRate * SHARE_OF_RATE);
      hours += screens * HOURS_PER_SCREEN + order.prints().size() * HOURS_PER_PRINT;
    }
    int days = (int) Math.ceil(ROOM * hours / hoursPerWeek * 7) + SPARE_DAYS;
    return Math.min(MOST_DAYS, Math.max(shop.settings().horizonDays(), days));
  }

  private static double hoursPerWeek(Shift shift) {
    double hours = java.time.Duration.between(shift.from(), shift.to()).toMinutes() / 60.0;
    return shift.days().size() * (hours > 0 ? hours : hours + 24);
  }
}
