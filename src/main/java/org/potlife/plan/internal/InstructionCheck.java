package org.potlife.plan.internal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.potlife.planning.Instructions;
import org.potlife.planning.Instructions.RunWish;
import org.potlife.platform.problem.FieldError;
import org.potlife.shop.Shop;

/** What instructions cannot ask of a shop, and where they contradict themselves. */
final class InstructionCheck {

  private final Instructions sent;
  private final Shop shop;
  private final List<FieldError> errors = new ArrayList<>();

  private InstructionCheck(Instructions sent, Shop shop) {
    this.sent = sent;
    this.shop = shop;
  }

  /**
   * @param sent null, or with nulls in it, where what was sent is no such document
   */
  static List<FieldError> of(Instructions sent, Shop shop) {
    InstructionCheck check = new InstructionCheck(sent, shop);
    for (int i = 0; sent != null && i < sent.runs().size(); i++) {
      RunWish wish = sent.runs().get(i);
      if (wish != null && wish.run() != null) {
        check.press(wish, "/runs/" + i + "/press");
        check.before(wish, "/runs/" + i + "/before");
      }
    }
    return check.errors;
  }

  private void press(RunWish wish, String pointer) {
    if (wish.press() != null && shop.findPress(wish.press()).isEmpty()) {
      refuse(pointer, "the plant has no press " + wish.press());
    } else if (wish.press() == null && wish.before() != null) {
      refuse(pointer, "must name the press that prints both runs, as before is given");
    }
  }

  private void before(RunWish wish, String pointer) {
    if (wish.before() == null) {
      return;
    }
    String press = otherPress(wish);
    if (press != null && wish.press() != null && !press.equals(wish.press())) {
      refuse(
          pointer,
          "must be a run of press %s, but %s is wanted on %s"
              .formatted(wish.press(), wish.before(), press));
    } else if (comesBefore(wish.before(), wish.run())) {
      refuse(pointer, "must not come before " + wish.run() + " itself, was " + wish.before());
    }
  }

  /** The press that others name for the run that this one comes before; null for none. */
  private String otherPress(RunWish wish) {
    String run = wish.before();
    return sent.runs().stream()
        .filter(other -> other != null && other != wish && other.press() != null)
        .filter(other -> run.equals(other.run()) || run.equals(other.before()))
        .map(RunWish::press)
        .findFirst()
        .orElse(null);
  }

  /** Whether a run is the other, or is wanted before it, directly or through others between. */
  private boolean comesBefore(String run, String other) {
    Set<String> seen = new HashSet<>();
    String next = run;
    while (next != null && seen.add(next)) {
      if (next.equals(other)) {
        return true;
      }
      next = find(next) == null ? null : find(next).before();
    }
    return false;
  }

  private RunWish find(String run) {
    return sent.runs().stream()
        .filter(Objects::nonNull)
        .filter(wish -> run.equals(wish.run()))
        .reduce((first, last) -> last)
        .orElse(null);
  }

  private void refuse(String pointer, String detail) {
    errors.add(new FieldError(pointer, detail));
  }
}
