package org.potlife.simulation;

/**
 * What the simulation knows of one press.
 *
 * @param staffed staffed time, spans by the press's longest pause
 * @param dryer index of the dryer that it feeds
 * @param rate pieces per hour when nothing holds it back
 * @param minRate least rate at which it runs, pieces/h
 * @param changeoverS fixed part of a set-up, s
 * @param perScreenS per mounted screen, s
 * @param tearDownS per removed screen, s
 * @param toDarkerS wash-up per station whose ink gets darker, s
 * @param toLighterS wash-up per station whose ink gets lighter, s
 * @param firstPieceS first piece at the end of the set-up, s
 * @param trialPieces pieces printed in it
 * @param openFrom no work of the plan before this, s
 * @param mounted the run whose screens are on the press at the start, or -1
 */
public record PressSpec(
    StaffedTime staffed,
    int dryer,
    int rate,
    int minRate,
    int changeoverS,
    int perScreenS,
    int tearDownS,
    int toDarkerS,
    int toLighterS,
    int firstPieceS,
    int trialPieces,
    int openFrom,
    int mounted) {

  /**
   * Latest start of staffed work that is done at a moment, or when the press is staffed next, s.
   *
   * @param workS staffed seconds
   */
  int beginFor(int moment, int workS) {
    int at = staffed.next(moment);
    return at >= StaffedTime.NEVER ? at : staffed.subtract(at, workS);
  }
}
