package org.potlife.plan.list;

import org.potlife.dryer.Belt;

/**
 * What one run asks of its dryer.
 *
 * @param run id of the run
 * @param name the run as people call it
 * @param dwellS longest dwell that its inks ask for, seconds
 * @param speedLimitMPerMin fastest belt that leaves it that dwell, at most the belt's own, m/min
 * @param garmentWidthMm width of a garment as it lies on the belt, mm
 * @param lanes garments side by side
 * @param pitchMm belt length per garment, gap included, mm
 * @param piecesPerHour most pieces that the belt takes at that speed with nothing else on it
 * @param depositWaterG water of the wet print on one piece, g
 * @param clothWaterG water of the cloth of one piece, its regain, g
 * @param kJPerPiece heat to warm and evaporate both, without the dryer's losses, kJ
 * @param waitedForDryerMinutes minutes that it starts later because the dryer had no room
 * @param maxWaitToDryerS longest wait between last stroke and belt that the press allows, seconds
 */
public record BeltRun(
    String run,
    String name,
    String press,
    String process,
    int dwellS,
    double speedLimitMPerMin,
    int garmentWidthMm,
    int lanes,
    int pitchMm,
    int piecesPerHour,
    double depositWaterG,
    double clothWaterG,
    double kJPerPiece,
    long waitedForDryerMinutes,
    int maxWaitToDryerS) {

  /**
   * Pieces per hour of this run for which so much of the belt has room.
   *
   * @param beltMPerMin belt length per minute, m/min; 0 or less is no room
   */
  double piecesPerHourOn(double beltMPerMin) {
    return beltMPerMin <= 0 ? 0 : Belt.piecesPerHour(lanes, beltMPerMin, pitchMm);
  }
}
