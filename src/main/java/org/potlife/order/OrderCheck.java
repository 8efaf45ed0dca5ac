package org.potlife.order;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.potlife.ink.Ink;
import org.potlife.ink.InkSystem;
import org.potlife.ink.Process;
import org.potlife.platform.problem.FieldError;
import org.potlife.shop.Shop;

/**
 * The rules across fields of an order, and of an order with its plant. Bears missing values, which
 * are reported elsewhere.
 *
 * <p>What the plant could do but not now (a due date in the past, more colours than any press has
 * stations, cloth that does not discharge) is taken: the plan shows it late or unplaced.
 */
public final class OrderCheck {

  /** How many inks a message lists. */
  private static final int LISTED_INKS = 12;

  private final Shop shop;
  private final List<FieldError> errors = new ArrayList<>();

  private OrderCheck(Shop shop) {
    this.shop = shop;
  }

  /** Everything that is wrong with the order. */
  public static List<FieldError> check(Order order, Shop shop) {
    OrderCheck check = new OrderCheck(shop);
    check.garments(order.garments());
    check.prints(order.prints());
    return check.errors;
  }

  /** The same, for an order that was sent to a path with a reference. */
  public static List<FieldError> check(Order order, String reference, Shop shop) {
    List<FieldError> errors = check(order, shop);
    if (order.reference() != null && !order.reference().equals(reference)) {
      errors.add(
          0, new FieldError("/reference", "must be the one in the path, was " + order.reference()));
    }
    return errors;
  }

  /** The same for many orders; pointers begin with the order's number. */
  public static List<FieldError> checkAll(List<Order> orders, Shop shop) {
    List<FieldError> errors = new ArrayList<>();
    if (orders.isEmpty()) {
      errors.add(new FieldError("", "must hold at least one order"));
    }
    Map<String, Integer> seen = new HashMap<>();
    for (int i = 0; i < orders.size(); i++) {
      Order order = orders.get(i);
      if (order == null) {
        continue;
      }
      String pointer = "/" + i;
      Integer before = order.reference() == null ? null : seen.putIfAbsent(order.reference(), i);
      if (before != null) {
        errors.add(
            new FieldError(
                pointer + "/reference",
                "must be unique in the request, was given in /" + before + " already"));
      }
      check(order, shop).forEach(error -> errors.add(error.under(pointer)));
    }
    return errors;
  }

  private void garments(Garments garments) {
    if (garments == null || garments.blanks() == null || garments.quantity() == null) {
      return;
    }
    if (garments.blanks() < garments.quantity()) {
      add(
          "/garments/blanks",
          "must be at least the quantity of "
              + garments.quantity()
              + ", was "
              + garments.blanks()
              + "; lower the quantity or leave blanks out");
    }
  }

  private void prints(List<Print> prints) {
    Set<List<String>> seen = new HashSet<>();
    for (int i = 0; prints != null && i < prints.size(); i++) {
      Print print = prints.get(i);
      if (print == null) {
        continue;
      }
      String pointer = "/prints/" + i;
      if (print.design() != null
          && print.position() != null
          && !seen.add(List.of(print.design(), print.position()))) {
        add(
            pointer + "/position",
            "the design " + print.design() + " is printed on " + print.position() + " already");
      }
      trialPrint(print, pointer);
      inks(print, pointer);
    }
  }

  private void trialPrint(Print print, String pointer) {
    boolean asked = print.trialPrint() != null && print.trialPrint() != TrialPrint.NOT_NEEDED;
    if (asked && print.process() == Process.WATER_BASED) {
      add(
          pointer + "/trialPrint",
          "is for discharge prints only; leave it out or say not-needed for water-based ones");
    }
  }

  private void inks(Print print, String pointer) {
    if (print.colours() == null || print.process() == null) {
      return;
    }
    boolean allKnown = !print.colours().isEmpty();
    boolean someDischarge = false;
    for (int i = 0; i < print.colours().size(); i++) {
      Colour colour = print.colours().get(i);
      String ink = colour == null ? null : colour.ink();
      Optional<Process> process = ink == null ? Optional.empty() : processOf(ink);
      allKnown &= process.isPresent();
      someDischarge |= process.filter(p -> p == Process.DISCHARGE).isPresent();
      if (ink != null && process.isEmpty()) {
        add(pointer + "/colours/" + i + "/ink", unknownInk(ink));
      } else if (process.filter(p -> p == Process.DISCHARGE).isPresent()
          && print.process() == Process.WATER_BASED) {
        add(
            pointer + "/colours/" + i + "/ink",
            ink + " is a discharge ink, the print is water-based; change one of them");
      }
    }
    if (print.process() == Process.DISCHARGE && allKnown && !someDischarge) {
      add(pointer + "/process", "is discharge, but no colour has a discharge ink");
    }
  }

  private Optional<Process> processOf(String ink) {
    return shop.findInk(ink).map(Ink::system).flatMap(shop::findInkSystem).map(InkSystem::process);
  }

  private String unknownInk(String ink) {
    List<String> known = shop.inks().stream().map(Ink::id).sorted().toList();
    String listed = String.join(", ", known.subList(0, Math.min(LISTED_INKS, known.size())));
    int more = known.size() - LISTED_INKS;
    return ink
        + " is not an ink of this plant; known are "
        + listed
        + (more > 0 ? " and " + more + " more" : "");
  }

  private void add(String pointer, String detail) {
    errors.add(new FieldError(pointer, detail));
  }
}
