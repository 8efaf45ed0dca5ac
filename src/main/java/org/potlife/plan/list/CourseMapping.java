package org.potlife.plan.list;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.potlife.plan.list.ScreenList.DryingCourse;
import org.potlife.plan.list.ScreenList.Stop;
import org.potlife.room.CabinetAir;
import org.potlife.room.CabinetAir.Stretch;
import org.potlife.screen.Cabinet;
import org.potlife.screen.Drying;
import org.potlife.screen.Emulsion;

/** How the loads of the cabinets dry by the air that the plan reckons with (R5). */
final class CourseMapping {

  /** The formula of the vapour pressure ends here. */
  private static final double WARMEST_C = 60;

  private final PlanIndex plan;

  CourseMapping(PlanIndex plan) {
    this.plan = plan;
  }

  DryingCourse course(Cabinet cabinet, String step, OffsetDateTime shut, OffsetDateTime dryAt) {
    Emulsion emulsion = plan.shop().screenRoom().emulsion();
    double needed = emulsion.requiredPaH(step);
    CabinetAir air = plan.air(cabinet);
    return new DryingCourse(
        needed * cabinet.reserveFactor(),
        air.deficitPaH(shut, dryAt) * cabinet.airflowFactor(),
        cabinet.airflowFactor(),
        stops(cabinet, air.stretches(shut, dryAt)));
  }

  private List<Stop> stops(Cabinet cabinet, List<Stretch> stretches) {
    List<Stop> stops = new ArrayList<>();
    for (int i = 0; i < stretches.size(); i++) {
      if (!stretches.get(i).dries()) {
        int last = i;
        while (last + 1 < stretches.size() && !stretches.get(last + 1).dries()) {
          last++;
        }
        stops.add(stop(cabinet, stretches.get(i), stretches.get(last)));
        i = last;
      }
    }
    return stops;
  }

  /** What helps is told for the air at the end of the stretch: it is the newest that is known. */
  private Stop stop(Cabinet cabinet, Stretch first, Stretch last) {
    double limit = plan.shop().screenRoom().emulsion().humidityLimitPercent();
    double warmer = Drying.dryingFromC(last.temperatureC(), last.humidityPercent(), limit);
    return new Stop(
        first.from(),
        last.to(),
        last.temperatureC(),
        last.humidityPercent(),
        limit,
        last.read(),
        warmer <= WARMEST_C ? warmer : null,
        plan.shop().screenRoom().cabinets().stream()
            .filter(other -> !other.id().equals(cabinet.id()))
            .filter(
                other ->
                    plan.air(other).stretches(first.from(), last.to()).stream()
                        .allMatch(Stretch::dries))
            .map(Cabinet::id)
            .toList());
  }
}
