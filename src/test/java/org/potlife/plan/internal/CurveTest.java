package org.potlife.plan.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.potlife.planning.SolveWatch.Progress;

class CurveTest {

  @Test
  void aLongSearchLeavesASmallCurveWithItsFirstAndLastPoint() {
    Curve curve = new Curve();
    for (int i = 0; i < 50_000; i++) {
      curve.add(new Progress(i, 0, 50_000 - i, 0));
    }

    List<Progress> points = curve.points();
    assertThat(points).hasSizeBetween(100, 401);
    assertThat(points.get(0).elapsedMs()).isZero();
    assertThat(points.get(points.size() - 1).elapsedMs()).isEqualTo(49_999);
    assertThat(points).extracting(Progress::elapsedMs).isSorted();
  }

  @Test
  void aShortSearchKeepsEveryPoint() {
    Curve curve = new Curve();
    for (int i = 0; i < 20; i++) {
      curve.add(new Progress(i, 0, 20 - i, 0));
    }

    assertThat(curve.points()).hasSize(20);
  }
}
