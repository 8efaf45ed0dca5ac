package org.potlife.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.potlife.dryer.Dryer;
import org.potlife.ink.Ink;
import org.potlife.ink.InkSystem;
import org.potlife.ink.LearnedGrams;
import org.potlife.order.Colour;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.sheet.PlanSheet.RateLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.shop.Press;
import org.potlife.shop.Shop;

/** Reads the lines of runs. */
final class RunReader {

  private static final List<String> TIMES =
      List.of(
          "start of set-up",
          "first piece",
          "start of print",
          "end of print",
          "off belt",
          "cool at");

  private final Shop shop;
  private final Map<String, Order> orders;
  private final List<LearnedGrams> learned;
  private final LineReader reader;

  RunReader(Shop shop, Map<String, Order> orders, List<LearnedGrams> learned, LineReader reader) {
    this.shop = shop;
    this.orders = orders;
    this.learned = learned;
    this.reader = reader;
  }

  Optional<RunFacts> read(RunLine line) {
    String id = line.id();
    Order order = orders.get(line.order());
    Press press = shop.findPress(line.press()).orElse(null);
    Dryer dryer = press == null ? null : shop.findDryer(press.dryer()).orElse(null);
    int print = order == null ? -1 : indexOf(order, line);
    boolean legible =
        reader.check(order != null, id, "is of order %s, which is not open", line.order())
            && reader.check(
                print >= 0,
                id,
                "order %s has no print %s on the %s",
                line.order(),
                line.design(),
                line.position());
    legible &= reader.check(press != null, id, "is on the unknown press %s", line.press());
    legible &=
        press == null
            || reader.check(
                dryer != null,
                id,
                "press %s feeds the unknown dryer %s",
                press.id(),
                press.dryer());
    legible &=
        reader.inOrder(
            id,
            TIMES,
            Arrays.asList(
                line.setUpStart(),
                line.firstPieceAt(),
                line.printStart(),
                line.printEnd(),
                line.offBelt(),
                line.coolAt()));
    legible &= reader.given(line.screens(), id, "list of screens");
    legible &= reader.given(line.inks(), id, "list of inks");
    legible &= reader.given(line.batches(), id, "list of batches");
    reader.lines(line.waits(), id, "waits");
    List<RunFacts.Rate> rates = rates(line);
    if (!legible) {
      return Optional.empty();
    }
    List<Ink> inks = new ArrayList<>();
    List<InkSystem> systems = new ArrayList<>();
    for (Colour colour : order.prints().get(print).colours()) {
      Optional<Ink> ink = shop.findInk(colour.ink());
      Optional<InkSystem> system = ink.flatMap(i -> shop.findInkSystem(i.system()));
      if (!reader.check(
          system.isPresent(), id, "the plant has no ink %s or not its system", colour.ink())) {
        return Optional.empty();
      }
      inks.add(ink.orElseThrow());
      systems.add(system.orElseThrow());
    }
    return Optional.of(
        new RunFacts(
            line,
            order,
            print,
            press,
            dryer,
            inks,
            systems,
            grams(order.prints().get(print), inks),
            line.setUpStart().toEpochSecond(),
            line.firstPieceAt().toEpochSecond(),
            line.printStart().toEpochSecond(),
            line.printEnd().toEpochSecond(),
            line.offBelt().toEpochSecond(),
            line.coolAt().toEpochSecond(),
            rates));
  }

  private List<Double> grams(Print print, List<Ink> inks) {
    List<Double> grams = new ArrayList<>();
    for (int i = 0; i < inks.size(); i++) {
      grams.add(Deposit.gramsPerPiece(print, print.colours().get(i), inks.get(i), learned));
    }
    return grams;
  }

  private static int indexOf(Order order, RunLine line) {
    for (int i = 0; i < order.prints().size(); i++) {
      Print print = order.prints().get(i);
      if (Objects.equals(print.design(), line.design())
          && Objects.equals(print.position(), line.position())) {
        return i;
      }
    }
    return -1;
  }

  private List<RunFacts.Rate> rates(RunLine line) {
    List<RunFacts.Rate> rates = new ArrayList<>();
    for (RateLine rate : reader.lines(line.rates(), line.id(), "rates")) {
      if (reader.inOrder(
          line.id(),
          List.of("start of rate", "end of rate"),
          Arrays.asList(rate.from(), rate.to()))) {
        rates.add(
            new RunFacts.Rate(
                rate.from().toEpochSecond(), rate.to().toEpochSecond(), rate.ratePerHour()));
      }
    }
    return rates;
  }
}
