package org.potlife.planning;

import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.score.calculator.EasyScoreCalculator;

/**
 * The score of a schedule: what the simulation says of it. Hard: runs without a place; medium:
 * weighted late minutes; soft: cost in 1/1000 of the plant currency.
 */
public class ScheduleScore implements EasyScoreCalculator<Schedule, HardMediumSoftLongScore> {

  @Override
  public HardMediumSoftLongScore calculateScore(Schedule schedule) {
    return schedule.desk().score(schedule.lines());
  }
}
