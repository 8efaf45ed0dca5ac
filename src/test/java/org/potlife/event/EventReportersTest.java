package org.potlife.event;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class EventReportersTest {

  @Test
  void eachRoomTellsOfItsOwnWork() {
    assertThat(EventReporters.of("batch.mixed")).containsExactly("ink-room", "planner");
    assertThat(EventReporters.of("ink.stocked")).containsExactly("ink-room", "planner");
    assertThat(EventReporters.of("run.started")).containsExactly("planner", "press");
    assertThat(EventReporters.of("press.down")).containsExactly("planner", "press");
    assertThat(EventReporters.of("dryer.down")).containsExactly("planner", "press");
    assertThat(EventReporters.of("climate.reading")).containsExactly("planner", "screen-room");
    assertThat(EventReporters.of("garments.received")).containsExactly("erp", "planner");
  }

  @Test
  void theLongestBeginningSaysIt() {
    assertThat(EventReporters.of("run.ink-used")).containsExactly("ink-room", "planner", "press");
    assertThat(EventReporters.of("screen.tension")).containsExactly("planner", "screen-room");
    assertThat(EventReporters.of("screen.broken"))
        .containsExactly("planner", "press", "screen-room");
  }

  @Test
  void whatNobodyListedIsForPlanners() {
    assertThat(EventReporters.of("weather.changed")).containsExactly("planner");
    assertThat(EventReporters.of("runs")).containsExactly("planner");
  }
}
