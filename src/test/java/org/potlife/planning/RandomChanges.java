package org.potlife.planning;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.potlife.order.Garments;
import org.potlife.order.Order;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.RunLine;

/** What happens to a published plan: time goes by, orders come, go and change. */
final class RandomChanges {

  private final Dice dice;
  private final int turn;

  private RandomChanges(Dice dice, int turn) {
    this.dice = dice;
    this.turn = turn;
  }

  /** The same plant later, with this plan as the published one. */
  static RandomCase later(RandomCase before, PlanSheet published, int turn) {
    Dice dice = new Dice(before.seed() * 31 + turn);
    int minutes = dice.of(dice.in(10, 60), dice.in(10, 400), dice.in(10, 2160));
    return new RandomChanges(dice, turn).change(before, published, minutes);
  }

  /** The same, where the press crew tells how the day goes. */
  static RandomCase laterAsTold(RandomCase before, PlanSheet published, int turn) {
    Dice dice = new Dice(before.seed() * 37 + turn);
    RandomChanges changes = new RandomChanges(dice, turn);
    RandomCase later = changes.change(before, published, untilWork(before, published, dice));
    return RandomFloor.since(later, published, dice);
  }

  /** Minutes until some run is under way, if one is to come. */
  private static int untilWork(RandomCase before, PlanSheet published, Dice dice) {
    List<Long> starts =
        published.runs().stream()
            .map(run -> run.setUpStart().toEpochSecond() - before.plannedAt().getEpochSecond())
            .filter(seconds -> seconds > 0)
            .sorted()
            .limit(6)
            .toList();
    int until = starts.isEmpty() ? 0 : (int) (dice.of(starts) / 60);
    return until + dice.mostly(dice.in(5, 120), dice.in(5, 600));
  }

  private RandomCase change(RandomCase before, PlanSheet published, int minutes) {
    Instant now = before.plannedAt().plusSeconds(60L * minutes + dice.mostly(0, 41));
    LocalDate today = now.atZone(before.shop().timeZone()).toLocalDate();
    LocalDate day = today.isAfter(before.day()) ? today : before.day();
    Instant freezeEnd = now.plusSeconds(60L * before.shop().settings().freezeMinutes());
    Set<String> frozen =
        published.runs().stream()
            .filter(run -> run.setUpStart().toInstant().isBefore(freezeEnd))
            .map(RunLine::order)
            .collect(Collectors.toSet());
    RandomOrders more =
        new RandomOrders(new Dice(before.seed()), before.day(), before.shop().timeZone());
    List<Order> orders = new ArrayList<>();
    for (Order order : before.orders()) {
      if (dice.percent(12)) {
        continue;
      }
      if (dice.percent(15)) {
        order = resized(order);
      }
      if (dice.percent(15) && !frozen.contains(order.reference())) {
        order =
            delayed(
                order,
                now.plusSeconds(60L * dice.in(0, 1440))
                    .atZone(before.shop().timeZone())
                    .toOffsetDateTime());
      }
      orders.add(order);
    }
    if (dice.percent(60) || orders.isEmpty()) {
      orders.add(more.order("R-" + turn + "-" + minutes));
    }
    return new RandomCase(
        before.seed(),
        before.shop(),
        orders,
        day,
        now,
        Optional.of(published),
        0,
        RandomReports.since(before, published, now, dice),
        before.floor());
  }

  private Order resized(Order order) {
    Garments g = order.garments();
    int quantity = dice.of(1, g.quantity() / 2 + 1, g.quantity() + 40, g.quantity() * 2);
    return with(
        order,
        new Garments(
            g.style(),
            g.kind(),
            g.colour(),
            g.lightness(),
            g.cottonPercent(),
            g.dye(),
            quantity,
            null,
            g.availableFrom(),
            g.lengthMm(),
            g.widthMm(),
            g.massG()));
  }

  private static Order delayed(Order order, OffsetDateTime until) {
    Garments g = order.garments();
    return with(
        order,
        new Garments(
            g.style(),
            g.kind(),
            g.colour(),
            g.lightness(),
            g.cottonPercent(),
            g.dye(),
            g.quantity(),
            g.blanks(),
            until,
            g.lengthMm(),
            g.widthMm(),
            g.massG()));
  }

  private static Order with(Order order, Garments garments) {
    return new Order(
        order.reference(),
        order.customer(),
        order.priority(),
        order.dueAt(),
        order.printsInListedOrder(),
        garments,
        order.prints());
  }
}
