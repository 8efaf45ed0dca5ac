package org.potlife.floor.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import org.potlife.floor.DayRun;
import org.potlife.floor.Floor;
import org.potlife.floor.FloorReport;

/** The floor's report, read back from what was told. */
@ApplicationScoped
class ReportedFloor implements Floor {

  private final ToldRuns runs;
  private final ToldHours hours;

  @Inject
  ReportedFloor(ToldRuns runs, ToldHours hours) {
    this.runs = runs;
    this.hours = hours;
  }

  @Override
  @Transactional
  public FloorReport reportAt(String plant, List<String> orders, Instant now) {
    return new FloorReport(
        runs.list(plant, orders, now), hours.down(plant, now), hours.staffing(plant, now));
  }

  @Override
  @Transactional
  public List<DayRun> listRuns(String plant, Instant from, Instant to, Instant now) {
    return runs.listBetween(plant, from, to, now);
  }
}
