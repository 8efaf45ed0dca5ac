package org.potlife.simulation;

/**
 * What changes in the screen room while sets of screens are made. It depends on the presses only by
 * the order in which sets are asked for and the moments at which frames come back.
 */
final class ScreenRoomState {

  final PlaceBook[] places;
  final CabinetBook[] cabinets;
  final FrameBook[] frames;

  /** By set, when it is ready, s; -1 while it is not made. */
  final int[] setReady;

  /** All sets are ready at given times: the room has nothing to do. */
  private boolean idle;

  ScreenRoomState(ScreenRoomSpec room, ScreenSetSpec[] sets) {
    ScreenRoomSpec.Place[] kinds = ScreenRoomSpec.Place.values();
    places = new PlaceBook[room.places().length];
    for (int i = 0; i < places.length; i++) {
      places[i] = new PlaceBook(room.staffed(), room.places()[i], room.shortestWorkS(kinds[i]));
    }
    cabinets = new CabinetBook[room.cabinets().length];
    for (int i = 0; i < cabinets.length; i++) {
      cabinets[i] = new CabinetBook();
    }
    frames = new FrameBook[room.frames().length];
    for (int i = 0; i < frames.length; i++) {
      frames[i] = new FrameBook(room.frames()[i]);
    }
    setReady = new int[sets.length];
    for (int i = 0; i < setReady.length; i++) {
      setReady[i] = sets[i].readyAt();
    }
  }

  /**
   * From here on sets of screens are ready at these times, whatever is asked for and given back.
   *
   * @param readyAt by set, s; below 0 for a set that was never wanted, which is ready at once
   */
  void give(int[] readyAt) {
    idle = true;
    for (int set = 0; set < setReady.length; set++) {
      setReady[set] = Math.max(0, readyAt[set]);
    }
  }

  boolean isIdle() {
    return idle;
  }

  void copyFrom(ScreenRoomState other) {
    System.arraycopy(other.setReady, 0, setReady, 0, setReady.length);
    idle = other.idle;
    if (idle) {
      return;
    }
    for (int i = 0; i < places.length; i++) {
      places[i].copyFrom(other.places[i]);
    }
    for (int i = 0; i < cabinets.length; i++) {
      cabinets[i].copyFrom(other.cabinets[i]);
    }
    for (int i = 0; i < frames.length; i++) {
      frames[i].copyFrom(other.frames[i]);
    }
  }
}
