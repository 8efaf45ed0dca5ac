package org.potlife.audit;

/**
 * A rule that the plan breaks.
 *
 * @param rule number of the rule, for example R14
 * @param subject the run, batch, screen, belt or order concerned
 * @param detail what was found and what is allowed, in words for a planner
 */
public record Finding(String rule, String subject, String detail) {

  @Override
  public String toString() {
    return rule + " " + subject + ": " + detail;
  }
}
