package org.potlife.simulation;

/**
 * What it costs that a run stands elsewhere than in the published plan (R22): it starts earlier or
 * later, on another press, or before a run that it followed. A shift weighs the more the sooner the
 * run was to start: |new start - old start| / sqrt(1 + hours until the old start), after R.
 * Rangsaritratsamee, W. G. Ferrell and M. B. Kurz, Dynamic rescheduling that simultaneously
 * considers efficiency and stability, Computers and Industrial Engineering 46, 2004 (from memory).
 */
final class Change {

  private final int[] publishedStart;
  private final int[] publishedPress;
  private final long pressChanged;
  private final long orderSwapped;

  /**
   * By run, price of an hour by which it starts at another time, 1/1000 of the plant currency:
   * rounded once, so that it adds up to the same in every order.
   */
  private final long[] shiftPerHour;

  Change(Problem problem) {
    publishedStart = problem.publishedStart();
    publishedPress = problem.publishedPress();
    pressChanged = problem.costs().pressChanged();
    orderSwapped = problem.costs().orderSwapped();
    shiftPerHour = new long[publishedStart.length];
    for (int run = 0; run < shiftPerHour.length; run++) {
      double hoursUntil = Math.max(0, publishedStart[run]) / 3600.0;
      shiftPerHour[run] =
          Math.round(problem.costs().runShiftedPerHour() / Math.sqrt(1 + hoursUntil));
    }
  }

  /**
   * Books what the run costs where it stands now.
   *
   * @param before the run before it on the press, -1 if none
   */
  void book(ShopState state, int run, int press, int start, int before) {
    int published = publishedStart[run];
    if (published < 0) {
      return;
    }
    state.addHourly(CostKind.CHANGE, shiftPerHour[run], Math.abs(start - published));
    if (publishedPress[run] != press) {
      state.add(CostKind.CHANGE, pressChanged);
    } else if (swapped(press, published, before)) {
      state.add(CostKind.CHANGE, orderSwapped);
    }
  }

  private boolean swapped(int press, int published, int before) {
    return before >= 0 && publishedPress[before] == press && publishedStart[before] > published;
  }
}
