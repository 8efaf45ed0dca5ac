package org.potlife.audit;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * R17: the next run on the same garments starts when they are off the belt and cool; where the
 * order wants its prints in the listed order, they come in it.
 */
final class R17CoolBetweenPrints implements Rule {

  @Override
  public String number() {
    return "R17";
  }

  @Override
  public String title() {
    return "Off the belt and cool";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    for (RunFacts run : evidence.runs()) {
      long cool = run.offBelt() + run.dryer().coolMinutes() * 60L;
      notes.check(
          Math.abs(run.coolAt() - cool) <= Tolerance.SECONDS,
          run.id(),
          "is said to be cool %s, off the belt %s and %d min of cooling give %s",
          evidence.at(run.coolAt()),
          evidence.at(run.offBelt()),
          run.dryer().coolMinutes(),
          evidence.at(cool));
    }
    Map<String, List<RunFacts>> sameGarments =
        evidence.runs().stream()
            .collect(
                Collectors.groupingBy(
                    run -> run.order().reference() + " lot " + run.line().lot(),
                    TreeMap::new,
                    Collectors.toList()));
    for (List<RunFacts> runs : sameGarments.values()) {
      List<RunFacts> inTime =
          runs.stream().sorted(Comparator.comparingLong(RunFacts::firstPieceAt)).toList();
      for (int i = 1; i < inTime.size(); i++) {
        RunFacts earlier = inTime.get(i - 1);
        RunFacts later = inTime.get(i);
        notes.check(
            later.firstPieceAt() >= earlier.coolAt() || evidence.isFact(later),
            later.id(),
            "starts on the garments %s, after run %s they are cool %s",
            evidence.at(later.firstPieceAt()),
            earlier.id(),
            evidence.at(earlier.coolAt()));
        notes.check(
            !later.order().printsInListedOrder()
                || earlier.printIndex() <= later.printIndex()
                || evidence.floor().hasBegun(earlier.id()),
            later.id(),
            "comes after run %s, the order wants its prints in the listed order",
            earlier.id());
      }
    }
  }
}
