package org.potlife.floor;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.potlife.shop.Closure;
import org.potlife.shop.Press;
import org.potlife.shop.Press.ExtraShift;
import org.potlife.shop.Shop;

/**
 * What the floor has reported up to a moment, as far as a plan made at that moment needs it.
 *
 * @param runs every run of an open or just finished order of which something was told
 * @param down times in which presses and dryers are down, apart for each of them, by start
 * @param staffing times that are staffed otherwise than usual, apart for each press, by start
 */
public record FloorReport(List<RunReport> runs, List<Downtime> down, List<Staffing> staffing) {

  /** Nothing was reported. */
  public static final FloorReport NOTHING = new FloorReport(null, null, null);

  public FloorReport {
    runs = runs == null ? List.of() : List.copyOf(runs);
    down = down == null ? List.of() : List.copyOf(down);
    staffing = staffing == null ? List.of() : List.copyOf(staffing);
  }

  /** Whether nothing was reported. */
  public boolean isEmpty() {
    return runs.isEmpty() && down.isEmpty() && staffing.isEmpty();
  }

  /**
   * The set-up as it stands: presses closed while they or their dryers are down, shifts as told.
   */
  public Shop standing(Shop shop) {
    return down.isEmpty() && staffing.isEmpty()
        ? shop
        : shop.withPresses(shop.presses().stream().map(this::standing).toList());
  }

  private Press standing(Press press) {
    List<Closure> closures = new ArrayList<>(press.closures());
    List<ExtraShift> extra = new ArrayList<>(press.extraShifts());
    for (Staffing told : staffing) {
      if (told.press().equals(press.id())) {
        closures = without(closures, told.from(), told.to());
        if (told.staffed()) {
          extra.add(new ExtraShift(told.from(), told.to()));
        } else {
          closures.add(new Closure(told.from(), told.to(), "not staffed"));
        }
      }
    }
    for (Downtime told : down) {
      if (told.stops(press.id(), press.dryer())) {
        closures.add(
            new Closure(told.from(), told.to(), told.cause() == null ? "down" : told.cause()));
      }
    }
    return press.withTimes(closures, extra);
  }

  private static List<Closure> without(
      List<Closure> closures, OffsetDateTime from, OffsetDateTime to) {
    List<Closure> left = new ArrayList<>();
    for (Closure closure : closures) {
      if (!closure.from().isBefore(to) || !closure.to().isAfter(from)) {
        left.add(closure);
        continue;
      }
      if (closure.from().isBefore(from)) {
        left.add(new Closure(closure.from(), from, closure.reason()));
      }
      if (closure.to().isAfter(to)) {
        left.add(new Closure(to, closure.to(), closure.reason()));
      }
    }
    return left;
  }
}
