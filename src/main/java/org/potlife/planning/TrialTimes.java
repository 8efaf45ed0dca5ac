package org.potlife.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.shop.Press;
import org.potlife.shop.Shop;
import org.potlife.simulation.StaffedTime;

/**
 * When the trial pieces of a set-up are on their way to the belt: in the staffed part of their
 * minutes, since a break may lie in between.
 */
final class TrialTimes {

  /** Frozen runs may lie before the plan. */
  private static final int DAYS_BEFORE = 90;

  /** A part of the trial, epoch seconds, with its rate in pieces per hour. */
  record Part(long from, long to, double perHour) {}

  private final Shop shop;
  private final Horizon horizon;
  private final Map<String, StaffedTime> staffed = new HashMap<>();

  TrialTimes(Shop shop, Horizon planned) {
    this.shop = shop;
    horizon = planned.earlier(DAYS_BEFORE);
  }

  List<Part> of(RunLine run) {
    int from = horizon.seconds(run.firstPieceAt());
    int to = horizon.seconds(run.printStart());
    List<Part> parts = new ArrayList<>();
    if (run.trialPieces() == 0 || from >= to) {
      return parts;
    }
    List<int[]> times = staffed(run.press()).within(from, to);
    int seconds = times.stream().mapToInt(time -> time[1] - time[0]).sum();
    for (int[] time : times) {
      parts.add(new Part(epoch(time[0]), epoch(time[1]), run.trialPieces() * 3600.0 / seconds));
    }
    return parts;
  }

  private StaffedTime staffed(String id) {
    Press press = shop.findPress(id).orElseThrow();
    return staffed.computeIfAbsent(id, any -> Calendars.staffed(press, horizon, 0));
  }

  private long epoch(int seconds) {
    return horizon.origin().getEpochSecond() + seconds;
  }
}
