package org.potlife.web.plan;

import java.util.Map;

/** What a planner can do about a cause. */
final class Remedy {

  private static final Map<String, String> BY_RULE =
      Map.ofEntries(
          Map.entry("R1", "A press that takes it: more stations, a larger print area, this kind."),
          Map.entry("R3", "A longer shift, a shorter break, or smaller lots."),
          Map.entry("R6", "A larger cabinet, or fewer colours."),
          Map.entry("R7", "Coat later, or expose sooner."),
          Map.entry("R8", "More frames of this mesh, or another mesh for some colours."),
          Map.entry("R9", "Enter the ink in the plant's set-up, or correct its name in the order."),
          Map.entry("R10", "Smaller lots, or an ink system that lives longer."),
          Map.entry("R11", "Smaller lots that are printed within one day."),
          Map.entry("R12", "A larger container, or another hour of the ink room."),
          Map.entry("R14", "A dryer with a longer tunnel."),
          Map.entry("R15", "A dryer with more belt, or a lower least rate of the press."),
          Map.entry("R16", "A dryer with more heat, or less ink on the print."),
          Map.entry("R18", "Approve the artwork, pass the trial print, or receive the garments."),
          Map.entry("R19", "Cloth that discharges, or a water-based print instead."),
          Map.entry("R20", "More blanks, or a smaller quantity."));

  private static final String ANY = "An earlier start, overtime, another press, or a later date.";

  private Remedy() {}

  static String ofUnplaced(String rule) {
    return BY_RULE.getOrDefault(rule, ANY);
  }

  /**
   * @param cause as on the sheet
   */
  static String ofLate(String cause) {
    if (cause.contains("was due before")) {
      return "A new date agreed with the customer.";
    }
    if (cause.contains("garments arrive") || cause.contains("not in house")) {
      return "Garments sooner, or the order in parts as they come.";
    }
    if (cause.contains("alone take longer")) {
      return "Smaller lots on two presses side by side, or a later date.";
    }
    if (cause.contains("not staffed")) {
      return "Overtime or a further shift on this press.";
    }
    if (cause.contains("screens are not ready")) {
      return "Coat sooner: the evening before, another cabinet, or a kept stencil.";
    }
    if (cause.contains("on another run")) {
      return "A second set of screens.";
    }
    if (cause.contains("ink cannot")) {
      return "The ink room an hour earlier, or one more at the mixer.";
    }
    if (cause.contains("dryer has no room")) {
      return "A press on another dryer, or a slow product at another hour.";
    }
    if (cause.contains("is taken by")) {
      return "This run before that one, or on another press; see what it costs first.";
    }
    return ANY;
  }
}
