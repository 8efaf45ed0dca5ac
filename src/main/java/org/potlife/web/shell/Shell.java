package org.potlife.web.shell;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import org.potlife.plan.PlanSummary;
import org.potlife.web.WallTime;

/**
 * What stands around every screen of a plant.
 *
 * @param plant id of the plant, as in the address
 * @param plantName what people call it
 * @param job the screen that is open
 * @param plants all plants, to change between them
 * @param zone the plant's zone
 * @param manner how this device shows figures
 * @param now when the page was made
 * @param inForce the plan in force; null when there is none
 */
public record Shell(
    String plant,
    String plantName,
    Job job,
    List<Plant> plants,
    ZoneId zone,
    Manner manner,
    Instant now,
    PlanSummary inForce) {

  /** A plant to change to. */
  public record Plant(String id, String name) {}

  /** The jobs of the navigation. */
  public List<Job> jobs() {
    return List.of(Job.values());
  }

  /** Address of the plant's screens, with a slash at its end. */
  public String ways() {
    return "/plants/" + plant + "/";
  }

  /** The plant's today. */
  public LocalDate today() {
    return LocalDate.ofInstant(now, zone);
  }

  /** The plant's times on a day. */
  public WallTime times(LocalDate day) {
    return manner.times(zone, day);
  }

  /** Offset of the plant's zone now. */
  public ZoneOffset offset() {
    return zone.getRules().getOffset(now);
  }

  /** The plant's clock when the page was made. */
  public WallTime.Shown clock() {
    return times(today()).start(now.atZone(zone).toOffsetDateTime());
  }

  /** Whether orders or set-up have changed since the plan in force was made. */
  public boolean stale() {
    return inForce != null && inForce.stale();
  }
}
