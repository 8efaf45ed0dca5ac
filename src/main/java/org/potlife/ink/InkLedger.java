package org.potlife.ink;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * Where every gram of a batch, or of a container in stock, came from and went to. What came in less
 * what went out is what is left, never less than nothing: a booking of more than is left is
 * refused. All in grams, all counted since the batch was mixed or the container put on the shelf.
 *
 * @param plannedG mass without agent in the plan; 0 for a container in stock
 * @param mixedG weighed in, without agent
 * @param agentG agent stirred in
 * @param foundG what a count found beyond the books, negative for what it missed
 * @param printedG onto garments, handling loss included
 * @param screensG left on the screens
 * @param returnedG put back to stock, where it is a container of its own
 * @param discardedG thrown away
 * @param lostG not accounted for when the container was empty
 */
public record InkLedger(
    int plannedG,
    int mixedG,
    int agentG,
    int foundG,
    int printedG,
    int screensG,
    int returnedG,
    int discardedG,
    int lostG) {

  public InkLedger {
    if (plannedG < 0
        || mixedG < 0
        || agentG < 0
        || printedG < 0
        || screensG < 0
        || returnedG < 0
        || discardedG < 0
        || lostG < 0) {
      throw new IllegalArgumentException("masses must be 0 g or more");
    }
    long left =
        (long) mixedG + agentG + foundG - printedG - screensG - returnedG - discardedG - lostG;
    if (left < 0) {
      throw new IllegalArgumentException("%d g more went out than came in".formatted(-left));
    }
  }

  /** A batch of which nothing is weighed yet. */
  public static InkLedger planned(int plannedG) {
    return new InkLedger(plannedG, 0, 0, 0, 0, 0, 0, 0, 0);
  }

  /** A container that is put on the shelf. */
  public static InkLedger stocked(int massG) {
    return planned(0).mixed(massG);
  }

  /** What should be in the container now, g. */
  @JsonProperty("leftG")
  public int leftG() {
    return mixedG + agentG + foundG - printedG - screensG - returnedG - discardedG - lostG;
  }

  public InkLedger mixed(int g) {
    return new InkLedger(
        plannedG, mixedG + g, agentG, foundG, printedG, screensG, returnedG, discardedG, lostG);
  }

  public InkLedger activated(int g) {
    return new InkLedger(
        plannedG, mixedG, agentG + g, foundG, printedG, screensG, returnedG, discardedG, lostG);
  }

  /**
   * Used by a run.
   *
   * @throws IllegalArgumentException if it is more than is left
   */
  public InkLedger used(int printG, int onScreensG) {
    return new InkLedger(
        plannedG,
        mixedG,
        agentG,
        foundG,
        printedG + printG,
        screensG + onScreensG,
        returnedG,
        discardedG,
        lostG);
  }

  /**
   * Put back to stock.
   *
   * @throws IllegalArgumentException if it is more than is left
   */
  public InkLedger returned(int g) {
    return new InkLedger(
        plannedG, mixedG, agentG, foundG, printedG, screensG, returnedG + g, discardedG, lostG);
  }

  /**
   * Thrown away.
   *
   * @throws IllegalArgumentException if it is more than is left
   */
  public InkLedger discarded(int g) {
    return new InkLedger(
        plannedG, mixedG, agentG, foundG, printedG, screensG, returnedG, discardedG + g, lostG);
  }

  /** The container is empty: what should be left is lost. */
  public InkLedger emptied() {
    return new InkLedger(
        plannedG,
        mixedG,
        agentG,
        foundG,
        printedG,
        screensG,
        returnedG,
        discardedG,
        lostG + leftG());
  }

  /** Somebody put the container on the scale. */
  public InkLedger counted(int g) {
    return new InkLedger(
        plannedG,
        mixedG,
        agentG,
        foundG + g - leftG(),
        printedG,
        screensG,
        returnedG,
        discardedG,
        lostG);
  }
}
