package org.potlife.planning;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.potlife.shop.Press;
import org.potlife.simulation.StaffedTime;

/** The staffed time of a press around a day. */
public final class PressHours {

  /** Days before and after that a run of the day may reach into. */
  private static final int AROUND = 2;

  private final Horizon horizon;
  private final StaffedTime staffed;

  private PressHours(Horizon horizon, StaffedTime staffed) {
    this.horizon = horizon;
    this.staffed = staffed;
  }

  /** The hours of a press from two days before a day until two days after it. */
  public static PressHours around(LocalDate day, Press press, ZoneId zone) {
    Instant from = day.minusDays(AROUND).atStartOfDay(zone).toInstant();
    Horizon horizon = Horizon.from(from, zone, day, AROUND + 1);
    return new PressHours(horizon, Calendars.staffed(press, horizon, 0));
  }

  /** Staffed seconds between two moments; 0 when the second is not after the first. */
  public long seconds(Instant from, Instant to) {
    return Math.max(
        0, staffed.workAt(horizon.seconds(to)) - (long) staffed.workAt(horizon.seconds(from)));
  }

  /** When so many staffed seconds after a moment are over; by the clock beyond these days. */
  public Instant after(Instant from, int seconds) {
    int to = seconds == 0 ? horizon.seconds(from) : staffed.add(horizon.seconds(from), seconds);
    return to >= StaffedTime.NEVER ? from.plusSeconds(seconds) : horizon.origin().plusSeconds(to);
  }
}
