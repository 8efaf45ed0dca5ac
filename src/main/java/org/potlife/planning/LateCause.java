package org.potlife.planning;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import org.potlife.order.Order;
import org.potlife.sheet.DurationWords;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.WaitLine;

/** Why an order is late, in a planner's words: what its last run waited for longest. */
final class LateCause {

  private LateCause() {}

  static String of(
      RunLine last,
      Order order,
      List<RunLine> runs,
      OffsetDateTime plannedAt,
      Instructions instructions) {
    if (order.dueAt().toInstant().isBefore(plannedAt.toInstant())) {
      return "it was due before the plan was made";
    }
    if (order.garments().availableFrom().isAfter(order.dueAt())) {
      return "its garments arrive after it is due";
    }
    Duration work = Duration.between(last.setUpStart(), last.offBelt());
    if (plannedAt.toInstant().plus(work).isAfter(order.dueAt().toInstant())) {
      return "set-up and printing alone take longer than is left until it is due";
    }
    WaitLine longest = null;
    for (WaitLine wait : last.waits()) {
      if (longest == null || wait.minutes() > longest.minutes()) {
        longest = wait;
      }
    }
    RunLine before = runBefore(last, runs);
    if (longest != null && (before == null || longest.minutes() >= 10)) {
      return words(longest, runs);
    }
    if (before != null && instructions.putsBefore(before.id(), last.id())) {
      return "the planner wants %s before it on %s".formatted(before.words(), last.press());
    }
    return before == null
        ? "set-up and printing end after it is due"
        : "%s is taken by %s until then".formatted(last.press(), before.words());
  }

  private static RunLine runBefore(RunLine run, List<RunLine> runs) {
    RunLine before = null;
    for (RunLine other : runs) {
      if (other.press().equals(run.press())
          && other.setUpStart().isBefore(run.setUpStart())
          && (before == null || other.setUpStart().isAfter(before.setUpStart()))) {
        before = other;
      }
    }
    return before;
  }

  private static String words(WaitLine wait, List<RunLine> runs) {
    if (Instructions.BEHIND.equals(wait.behind())) {
      return "the planner wants it no earlier, " + DurationWords.of(wait.minutes());
    }
    String behind = wait.behind() == null ? "" : " behind " + named(wait.behind(), runs);
    String what =
        switch (wait.cause()) {
          case "closed" -> "the press is not staffed";
          case "garments" -> "its garments are not in house";
          case "same-garments" -> "another print on its garments is not done and cool";
          case "screens" -> "its screens are not ready";
          case "same-screens" -> "its screens are on another run";
          case "ink-room" -> "its ink cannot be ready earlier";
          case "dryer" -> "the dryer has no room";
          default -> wait.cause();
        };
    return what + ", " + DurationWords.of(wait.minutes()) + behind;
  }

  private static String named(String behind, List<RunLine> runs) {
    return runs.stream()
        .filter(run -> run.id().equals(behind))
        .findFirst()
        .map(RunLine::words)
        .orElse(behind);
  }
}
