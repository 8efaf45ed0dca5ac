package org.potlife.plan.list;

import org.potlife.planning.Instructions;
import org.potlife.sheet.PlanSheet.WaitLine;

/** Says in a crew's words why a press waits. */
final class WaitWords {

  private WaitWords() {}

  static String of(PlanIndex plan, WaitLine wait) {
    boolean alone = wait.behind() == null || wait.behind().isBlank();
    String behind = alone ? null : plan.runName(wait.behind());
    if (Instructions.BEHIND.equals(wait.behind())) {
      return "the planner wants it no earlier";
    }
    return switch (wait.cause()) {
      case "closed" -> "nobody is at the press" + because(behind);
      case "garments" -> "the garments are not in house yet" + because(behind);
      case "same-garments" ->
          "the same garments are still printed or cooling" + after(behind, "from ");
      case "screens" -> "the screens are not ready" + because(behind);
      case "same-screens" -> "the screens are still in use" + after(behind, "by ");
      case "ink-room" -> "the ink is not ready" + because(behind);
      case "dryer" -> "the belt has no room" + because(behind);
      default -> wait.cause() + because(behind);
    };
  }

  private static String because(String behind) {
    return after(behind, "behind ");
  }

  private static String after(String behind, String lead) {
    return behind == null ? "" : ", " + lead + behind;
  }
}
