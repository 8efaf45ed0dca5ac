package org.potlife.planning;

import org.potlife.order.Order;
import org.potlife.shop.Press;
import org.potlife.shop.Shift;
import org.potlife.shop.Shop;

/** How far a plan must reach: the plant's setting, or longer when the orders need it. */
final class HorizonDays {

  private static final int MOST_DAYS = 180;

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
      hours += order.prints().size() * order.garments().quantity() / (meanRate / 2);
      hours += screens * 0.2 + order.prints().size() * 0.5;
    }
    int days = (int) Math.ceil(2 * hours / hoursPerWeek * 7) + 3;
    return Math.min(MOST_DAYS, Math.max(shop.settings().horizonDays(), days));
  }

  private static double hoursPerWeek(Shift shift) {
    double hours = java.time.Duration.between(shift.from(), shift.to()).toMinutes() / 60.0;
    return shift.days().size() * (hours > 0 ? hours : hours + 24);
  }
}
