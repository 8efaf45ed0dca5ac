package org.potlife.plan.list;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.at;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.potlife.plan.PlanFixture;
import org.potlife.plan.list.BeltList.DryerDay;
import org.potlife.plan.list.BeltList.Setting;
import org.potlife.plan.list.PlanOverview.Day;
import org.potlife.plan.list.PlanOverview.Promise;

class BeltAndLateListTest {

  private final PlanIndex plan = PlanFixture.index();

  @Test
  void everyDryerHasItsPeriodsAndAnIdleOneNone() {
    BeltList list = BeltList.of(plan, DAY);

    assertThat(list.dryers()).extracting(DryerDay::dryer).containsExactly("D1", "D2");
    assertThat(list.dryers().get(0).presses()).containsExactly("P1", "P2");
    assertThat(list.dryers().get(0).periods()).hasSize(5);
    assertThat(list.dryers().get(1).settings()).isEmpty();
  }

  @Test
  void theTimetableTellsWhenTheSpeedIsTurnedAndWhatTheWorstMomentIs() {
    List<Setting> settings = BeltList.of(plan, DAY).dryers().get(0).settings();

    assertThat(settings)
        .extracting(Setting::from, Setting::speedMPerMin, Setting::continued)
        .containsExactly(
            tuple(at("07:00"), 1.9, true),
            tuple(at("08:27"), 2.4, false),
            tuple(at("09:40"), 2.0, false),
            tuple(at("11:30"), 2.0, false));
    assertThat(settings.get(0).areaPercent()).isEqualTo(98);
    assertThat(settings.get(0).bounds()).containsExactly("dwell", "area");
    assertThat(settings.get(0).runs())
        .containsExactly("HC-2041 crest, front", "MB-118 loaf, front, lot 1");
  }

  @Test
  void lateOrdersStandWithTheirCauseAndUnplacedOnesWithTheirRule() {
    LateList list = LateList.of(plan);

    assertThat(list.late().get(0).line().minutes()).isEqualTo(40);
    assertThat(list.late().get(0).priority()).isEqualTo(1);
    assertThat(list.late().get(0).garments()).isEqualTo("hooded top, black");
    assertThat(list.unplaced().get(0).line().rule()).isEqualTo("R19");
    assertThat(list.unplaced().get(0).customer()).isEqualTo("Runners' Union");
    assertThat(list.empty()).isFalse();
  }

  @Test
  void theOverviewCountsEachDay() {
    assertThat(PlanOverview.of(plan).days())
        .extracting(Day::day, Day::runs, Day::pieces, Day::screens)
        .containsExactly(tuple(DAY, 4, 824, 11), tuple(DAY.plusDays(1), 1, 206, 0));
  }

  @Test
  void promisesStandByDueDateWithTheLastGarmentOffTheBelt() {
    assertThat(PlanOverview.of(plan).promises())
        .extracting(Promise::order, Promise::plannedFinish, Promise::lateMinutes)
        .containsExactly(
            tuple("LR-77", at("12:40"), 40L),
            tuple("HC-2041", at("10:55"), 0L),
            tuple("MB-118", at(DAY.plusDays(1), "06:39"), 0L));
  }
}
