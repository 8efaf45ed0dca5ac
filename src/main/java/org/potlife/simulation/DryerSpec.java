package org.potlife.simulation;

/**
 * What the simulation knows of one dryer.
 *
 * @param maxSpeed fastest belt, um/min
 * @param usableHeat usable heat, 0.1 W
 * @param transitS longest way over the belt that can occur, s
 * @param coolS until garments may be printed again, s
 */
public record DryerSpec(int maxSpeed, int usableHeat, int transitS, int coolS) {

  /** From the last stroke of a run until its garments may be printed again (R17), s. */
  public int garmentsFreeS() {
    return transitS + coolS;
  }
}
