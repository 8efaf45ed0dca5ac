package org.potlife.planning;

import java.util.List;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.ProblemFactCollectionProperty;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;

/** All lines together. */
@PlanningSolution
public class Schedule {

  @PlanningEntityCollectionProperty private List<PressLine> lines;

  @ProblemFactCollectionProperty @ValueRangeProvider private List<RunCard> cards;

  @PlanningScore private HardMediumSoftLongScore score;

  /** Shared by all copies of the schedule within one search, which is single-threaded. */
  private SearchDesk desk;

  /** For the search's cloner only. */
  public Schedule() {}

  Schedule(List<PressLine> lines, List<RunCard> cards, SearchDesk desk) {
    this.lines = lines;
    this.cards = cards;
    this.desk = desk;
  }

  List<PressLine> lines() {
    return lines;
  }

  /** By the run's index. */
  List<RunCard> cards() {
    return cards;
  }

  HardMediumSoftLongScore score() {
    return score;
  }

  SearchDesk desk() {
    return desk;
  }
}
