package org.potlife.plan.list;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.LateLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.UnplacedLine;

/**
 * An order whose promise changes from one plan to the next. A new order is among them only if it
 * would be late or has no place: nothing was promised before, but its due date is a promise too
 * (R21).
 *
 * @param customer null when no part of the order has a place in either plan
 * @param finishBefore last garment off the belt in the plan before; null where a part of the order
 *     had no place, or the order is new
 * @param finish the same in this plan
 * @param worse whether it is later after its due date than before, or lost its place; a later end
 *     before the due date is not worse
 * @param text the change in a sentence
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record PromiseChange(
    String order,
    String customer,
    OffsetDateTime finishBefore,
    OffsetDateTime finish,
    long lateMinutesBefore,
    long lateMinutes,
    boolean worse,
    String text) {

  private record Stand(
      String customer, OffsetDateTime finish, long lateMinutes, String withoutPlace) {

    static final Stand NEW = new Stand(null, null, 0, null);
  }

  /** The changed promises, the worst first. */
  static List<PromiseChange> between(PlanSheet before, PlanSheet now) {
    Map<String, Stand> then = stands(before);
    List<PromiseChange> changes = new ArrayList<>();
    stands(now)
        .forEach(
            (order, stand) -> {
              Stand was = then.get(order);
              boolean tells =
                  was == null
                      ? stand.lateMinutes() > 0 || stand.withoutPlace() != null
                      : differ(was, stand);
              if (tells) {
                changes.add(change(order, was, stand));
              }
            });
    changes.sort(
        Comparator.comparing(PromiseChange::worse)
            .reversed()
            .thenComparing(change -> change.lateMinutesBefore() - change.lateMinutes())
            .thenComparing(PromiseChange::order));
    return changes;
  }

  private static boolean differ(Stand was, Stand is) {
    if (was.withoutPlace() != null || is.withoutPlace() != null) {
      return (was.withoutPlace() == null) != (is.withoutPlace() == null);
    }
    long seconds = Duration.between(was.finish(), is.finish()).abs().toSeconds();
    return seconds >= 30 || was.lateMinutes() != is.lateMinutes();
  }

  private static PromiseChange change(String order, Stand before, Stand is) {
    Stand was = Objects.requireNonNullElse(before, Stand.NEW);
    boolean hadNoPlace = was.withoutPlace() != null;
    boolean losesPlace = is.withoutPlace() != null;
    return new PromiseChange(
        order,
        Objects.requireNonNullElse(is.customer(), was.customer()),
        was.finish(),
        is.finish(),
        was.lateMinutes(),
        is.lateMinutes(),
        !hadNoPlace && (losesPlace || is.lateMinutes() > was.lateMinutes()),
        text(order, before, is));
  }

  private static String text(String order, Stand was, Stand is) {
    String ends =
        is.withoutPlace() == null
            ? "ends " + Spoken.time(is.finish()) + ", " + Spoken.lateness(is.lateMinutes())
            : "has no place: " + is.withoutPlace();
    if (was == null) {
      return order + " is new and " + ends + ".";
    }
    String ended =
        was.withoutPlace() == null
            ? Spoken.time(was.finish()) + ", " + Spoken.lateness(was.lateMinutes())
            : "without a place";
    return order + " " + ends + "; before: " + ended + ".";
  }

  private static Map<String, Stand> stands(PlanSheet sheet) {
    Map<String, Stand> stands = new TreeMap<>();
    for (RunLine run : sheet.runs()) {
      Stand own = new Stand(run.customer(), run.offBelt(), 0, null);
      stands.merge(run.order(), own, (a, b) -> a.finish().isBefore(b.finish()) ? b : a);
    }
    for (LateLine late : sheet.late()) {
      stands.computeIfPresent(
          late.order(),
          (order, stand) -> new Stand(stand.customer(), stand.finish(), late.minutes(), null));
    }
    // an order with a print that has no place is not finished at all
    for (UnplacedLine line : sheet.unplaced()) {
      stands.merge(
          line.order(),
          new Stand("", null, 0, line.cause()),
          (stand, without) -> new Stand(stand.customer(), null, 0, line.cause()));
    }
    return stands;
  }
}
