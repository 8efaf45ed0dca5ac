package org.potlife.simulation;

/**
 * What the simulation knows of one run. Indices point into the {@link Problem}'s lists.
 *
 * @param order index of the order
 * @param garmentLot index of the garments it is printed on; shared by the prints of a lot
 * @param stage place among the prints of the lot when they have a listed order, from 0; else -1
 * @param screenSet index of the set of screens, or -1 if it needs none
 * @param pieces pieces in all, trial pieces included
 * @param garmentsFrom when the garments are in house, seconds
 * @param clothLightness 0 (black) to 100 (white)
 * @param screens identity of the screen at each station
 * @param inks ink at each station
 * @param needs what it draws of each ink
 * @param feeds how it loads each dryer, by dryer; null where it does not fit the belt
 * @param presses by press, whether it may run there
 */
public record RunSpec(
    int order,
    int garmentLot,
    int stage,
    int screenSet,
    int pieces,
    int garmentsFrom,
    double clothLightness,
    int[] screens,
    int[] inks,
    InkNeed[] needs,
    BeltFeed[] feeds,
    boolean[] presses) {

  /** The same, drawing nothing; what is mounted and washed up for it stays. */
  RunSpec withoutInk() {
    return new RunSpec(
        order,
        garmentLot,
        stage,
        screenSet,
        pieces,
        garmentsFrom,
        clothLightness,
        screens,
        inks,
        new InkNeed[0],
        feeds,
        presses);
  }

  /**
   * Draw of one ink.
   *
   * @param ink index of the ink
   * @param printG onto the garments over the whole run, g
   * @param chargeG onto the screens when there is a set-up, g
   */
  public record InkNeed(int ink, int printG, int chargeG) {}

  /**
   * Load on a dryer.
   *
   * @param speedLimit fastest belt for its dwell, um/min
   * @param areaPerRate belt length used, um/min for each piece per hour
   * @param heatPerRate heat used, 0.1 W for each piece per hour
   */
  public record BeltFeed(int speedLimit, int areaPerRate, int heatPerRate) {}
}
