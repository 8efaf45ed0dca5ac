package org.potlife.audit;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * R13: activated ink serves only runs of the same ink, and none that starts after its pot life; it
 * takes up no other batch. A batch that is gone serves nobody, and what is on the shelf comes first
 * ({@link R13Stock}).
 */
final class R13Leftovers implements Rule {

  @Override
  public String number() {
    return "R13";
  }

  @Override
  public String title() {
    return "Leftovers";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    Set<String> batchNames =
        evidence.batches().stream().map(BatchFacts::id).collect(Collectors.toSet());
    for (BatchFacts batch : evidence.batches()) {
      for (BatchFacts.Use use : batch.uses()) {
        notes.check(
            use.run().stationsWith(batch.ink().id()) > 0,
            batch.id(),
            "of ink %s serves run %s, which does not print it",
            batch.ink().id(),
            use.run().id());
        boolean fact = evidence.isDrawnAsItIs(batch, use.run());
        notes.check(
            fact || !evidence.ink().isGone(batch.id()),
            batch.id(),
            "is gone and still serves run %s",
            use.run().id());
        if (batch.useBy() != null && !fact) {
          notes.check(
              use.from() <= batch.useBy(),
              batch.id(),
              "serves run %s from %s, its pot life ended %s",
              use.run().id(),
              evidence.at(use.from()),
              evidence.at(batch.useBy()));
        }
      }
      if (batch.activated() && batch.line().components() != null) {
        List<String> takenUp =
            batch.line().components().stream()
                .filter(Objects::nonNull)
                .map(component -> component.name())
                .filter(name -> name != null && batchNames.contains(name))
                .toList();
        notes.check(
            takenUp.isEmpty(), batch.id(), "has agent and takes up the batches %s", takenUp);
      }
    }
    new R13Stock(evidence, notes).check();
  }
}
