package org.potlife.simulation;

/**
 * What the simulation knows of the ink room.
 *
 * @param staffed staffed time
 * @param mixers people at the mixer
 * @param mixS weighing and mixing of a batch, s
 * @param activateS stirring in the agent of a batch, s
 * @param containerG most ink in a batch, g
 * @param reserveG reserve in a batch, g
 */
public record InkRoomSpec(
    StaffedTime staffed, int mixers, int mixS, int activateS, int containerG, int reserveG) {

  /** Less than this is not worth changing the bucket for, g; our own choice, no source. */
  public static final int LEAST_DRAW_G = 20;

  /** Start of the last staffed time that begins before a day does, s; at least 0. */
  int eveningBefore(int dayStart) {
    int stretch = staffed.stretchAt(dayStart);
    while (stretch >= staffed.count() || (stretch > 0 && staffed.start(stretch) >= dayStart)) {
      if (stretch == 0) {
        return 0;
      }
      stretch--;
    }
    return Math.max(0, Math.min(dayStart, staffed.start(stretch)));
  }
}
