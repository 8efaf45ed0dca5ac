package org.potlife.plan.list;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.EIGHT;
import static org.potlife.plan.PlanFixture.at;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.potlife.plan.PlanFixture;
import org.potlife.plan.list.BeltList.Setting;
import org.potlife.plan.list.PressList.PressDay;
import org.potlife.plan.list.RunCard.Draw;
import org.potlife.plan.list.RunCard.Note;
import org.potlife.plan.list.RunCard.Station;
import org.potlife.plan.list.RunCard.Wait;

class PressListTest {

  private final PressList list = PressList.of(PlanFixture.index(), DAY);

  @Test
  void everyPressHasItsRunsOfTheDayInOrder() {
    assertThat(list.presses()).extracting(PressDay::press).containsExactly("P1", "P2", "P3");
    assertThat(list.presses().get(0).runs())
        .extracting(card -> card.run().design())
        .containsExactly("crest", "roster", "lamp");
    assertThat(list.presses().get(0).pieces()).isEqualTo(247 + 247 + 124);
    assertThat(list.presses().get(1).runs()).hasSize(1);
    assertThat(list.presses().get(2).runs()).isEmpty();
  }

  @Test
  void stationsCarryInkScreenAndMesh() {
    RunCard crest = list.presses().get(0).runs().get(0);

    assertThat(crest.stations()).extracting(s -> s.ink().ink()).isEqualTo(EIGHT);
    assertThat(crest.stations().get(2))
        .isEqualTo(
            new Station(
                3,
                new InkChip("brick", "#a3412f"),
                "crest/brick",
                43,
                80,
                false,
                List.of(new Draw("brick-1", at("07:00"), at("08:24"), at("14:36")))));
    assertThat(crest.flashes()).isEqualTo(1);
  }

  @Test
  void keptStencilsAreMarked() {
    assertThat(list.presses().get(1).runs().get(0).stations())
        .extracting(Station::kept)
        .containsExactly(true, true);
  }

  @Test
  void beltSettingsWithTheSameSpeedAreJoined() {
    RunCard crest = list.presses().get(0).runs().get(0);

    assertThat(crest.belt())
        .extracting(Setting::from, Setting::to, Setting::speedMPerMin, Setting::heatPercent)
        .containsExactly(tuple(at("07:00"), at("08:27"), 1.9, 71));
  }

  @Test
  void aSecondBatchIsListedFromItsFirstStroke() {
    RunCard roster = list.presses().get(0).runs().get(1);

    List<Draw> draws = roster.stations().get(0).draws();
    assertThat(draws).extracting(Draw::batch).containsExactly("brick-1", "brick-2");
    assertThat(draws.get(1).from()).isEqualTo(at("10:10"));
    assertThat(draws.get(1).useBy()).isEqualTo(at("17:37"));
  }

  @Test
  void pressNotesComeOncePerInkSystem() {
    assertThat(list.presses().get(0).runs().get(0).notes())
        .extracting(Note::system)
        .containsExactly("lift");
  }

  @Test
  void waitsReadAsWords() {
    RunCard roster = list.presses().get(0).runs().get(1);

    assertThat(roster.waits())
        .extracting(Wait::words)
        .containsExactly(
            "the same garments are still printed or cooling, from HC-2041 crest, front");
  }

  @Test
  void aLateOrderIsMarkedOnItsRunsAndAFrozenRunIsToo() {
    RunCard lamp = list.presses().get(0).runs().get(2);
    RunCard loaf = list.presses().get(1).runs().get(0);

    assertThat(lamp.lateMinutes()).isEqualTo(40);
    assertThat(lamp.frozen()).isFalse();
    assertThat(loaf.lateMinutes()).isZero();
    assertThat(loaf.frozen()).isTrue();
  }

  @Test
  void theNextDayHasTheSecondLot() {
    PressList next = PressList.of(PlanFixture.index(), DAY.plusDays(1));

    assertThat(next.presses().get(1).runs())
        .extracting(card -> card.run().lot())
        .containsExactly(2);
  }
}
