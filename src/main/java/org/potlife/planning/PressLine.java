package org.potlife.planning;

import java.util.ArrayList;
import java.util.List;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.variable.PlanningListVariable;

/** The line of runs on one press: the only thing that the search decides. */
@PlanningEntity
public class PressLine {

  static final String RUNS = "runs";

  @PlanningId private int press;

  @PlanningListVariable private List<RunCard> runs;

  /** For the search's cloner only. */
  public PressLine() {}

  PressLine(int press) {
    this.press = press;
    runs = new ArrayList<>();
  }

  int press() {
    return press;
  }

  List<RunCard> runs() {
    return runs;
  }
}
