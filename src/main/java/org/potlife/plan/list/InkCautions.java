package org.potlife.plan.list;

import java.util.List;

/**
 * What is to be kept in mind where discharge ink is weighed, activated and cured. Reminders only:
 * the plan knows nothing of the room's air and declares nothing safe.
 */
public final class InkCautions {

  /** Where activated ink is left over. */
  public static final String PUT_ASIDE =
      "Put activated ink aside as its safety data sheet and the local rules say; it goes on giving off"
          + " gas.";

  private InkCautions() {}

  /** The reminders, in the order in which they are met during the work. */
  public static List<String> lines() {
    return List.of(
        "The agent is a reducing agent. Keep it dry, cool and closed, away from acids, oxidisers and"
            + " heat.",
        "Wear gloves and eye protection while weighing and stirring; do not breathe the dust.",
        "Activated ink gives off formaldehyde and sulphur dioxide, in the bucket, on the press and"
            + " most of all in the dryer. Stir and print with the exhaust running.",
        "Keep activated ink away from heat, and only as much of it as the list says.",
        PUT_ASIDE,
        "Unwashed prints can carry formaldehyde.",
        "The safety data sheet of the agent and the local rules come before this page. It reminds; it"
            + " measures nothing and declares nothing safe.");
  }
}
