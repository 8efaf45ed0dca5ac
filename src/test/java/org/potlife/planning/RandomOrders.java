package org.potlife.planning;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.potlife.ink.Process;
import org.potlife.order.Colour;
import org.potlife.order.Garments;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.order.TrialPrint;
import org.potlife.screen.FrameStock;
import org.potlife.screen.KeptStencil;

/** Orders of every kind for random plants; few designs, so that some come again. */
final class RandomOrders {

  private static final List<String> POSITIONS = List.of("front", "back", "sleeve");

  private record Design(String name, Process process, List<Colour> colours) {}

  private final Dice dice;
  private final LocalDate day;
  private final ZoneId zone;
  private final List<Design> designs = new ArrayList<>();

  RandomOrders(Dice dice, LocalDate day, ZoneId zone) {
    this.dice = dice;
    this.day = day;
    this.zone = zone;
    for (int i = dice.in(2, 6); i > 0; i--) {
      designs.add(design("design" + i));
    }
  }

  private Design design(String name) {
    boolean discharge = dice.percent(60);
    List<Colour> colours = new ArrayList<>();
    for (int i = dice.mostly(dice.in(1, 3), 1, 5, 8); i > 0; i--) {
      boolean plain = !discharge || dice.percent(20);
      String ink =
          plain ? dice.of("white", "black", "red") : dice.of("brick", "sand", "sky", "flame");
      FrameStock mesh = dice.of(RandomShops.MESHES);
      colours.add(
          new Colour(
              ink,
              dice.real(1, 60),
              mesh.meshPerCm(),
              mesh.threadUm(),
              dice.percent(20) ? 100.0 : null,
              dice.percent(15) ? dice.of(0.2, 3.0, 40.0) : null));
    }
    return new Design(name, discharge ? Process.DISCHARGE : Process.WATER_BASED, colours);
  }

  /** Stencils that a plant may have kept. */
  List<KeptStencil> stencils() {
    List<KeptStencil> stencils = new ArrayList<>();
    for (Design design : designs) {
      for (Colour colour : design.colours()) {
        stencils.add(
            new KeptStencil(
                "K" + stencils.size(),
                design.name(),
                colour.ink(),
                colour.meshPerCm(),
                colour.threadUm()));
      }
    }
    return stencils;
  }

  List<Order> list() {
    List<Order> orders = new ArrayList<>();
    for (int i = dice.mostly(dice.in(1, 8), 1, 15); i > 0; i--) {
      orders.add(order("A-" + i));
    }
    return orders;
  }

  /** An order with this number. */
  Order order(String reference) {
    List<Print> prints = new ArrayList<>();
    int count = dice.mostly(1, 2, 3);
    for (int i = 0; i < count; i++) {
      prints.add(print(dice.of(designs), POSITIONS.get(i)));
    }
    return new Order(
        reference,
        null,
        dice.in(1, 5),
        time(-2 * 1440, 6 * 1440),
        dice.percent(40),
        garments(),
        prints);
  }

  private Garments garments() {
    int quantity =
        dice.percent(4)
            ? dice.in(2000, 12000)
            : dice.percent(15) ? dice.in(1, 8) : dice.in(10, 600);
    return new Garments(
        "tee",
        dice.percent(97) ? null : "hood",
        "navy",
        dice.real(0, 100),
        dice.percent(98) ? 100.0 : 40.0,
        dice.percent(98) ? "reactive" : "pigment",
        quantity,
        dice.of(null, quantity, quantity + quantity / 50, quantity + 1000),
        time(-2880, dice.percent(75) ? 0 : 2880),
        dice.of(720, 300, 1100),
        dice.mostly(560, 200, 900),
        dice.of(190, 80, 600));
  }

  private Print print(Design design, String position) {
    boolean discharge = design.process() == Process.DISCHARGE;
    List<Colour> colours = design.colours();
    if (colours.size() > 1 && dice.percent(15)) {
      colours = colours.subList(0, colours.size() - 1);
    }
    return new Print(
        design.name(),
        position,
        design.process(),
        dice.percent(98),
        discharge ? (dice.percent(98) ? TrialPrint.PASSED : TrialPrint.OPEN) : null,
        dice.mostly(1, 2, 3),
        dice.in(50, 300),
        dice.in(50, 380),
        dice.mostly(0, 1, 2),
        colours);
  }

  /** Some minute between two counted from the start of the day. */
  private OffsetDateTime time(int from, int to) {
    OffsetDateTime time = day.atStartOfDay(zone).plusMinutes(dice.in(from, to)).toOffsetDateTime();
    return dice.percent(15) ? time.plusSeconds(dice.in(0, 59)).plusNanos(dice.of(0, 5)) : time;
  }
}
