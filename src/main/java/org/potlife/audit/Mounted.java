package org.potlife.audit;

import java.util.List;
import java.util.Optional;

/**
 * What is on a press when a run is set up, from the sequence on the press. A frozen run is measured
 * against the run that the published plan had before it: that one may have left the sheet since,
 * with its order.
 */
final class Mounted {

  private Mounted() {}

  /** The set-up that a run needs; nothing when the published sheet does not tell. */
  static Optional<SetUp> setUp(Evidence evidence, RunFacts run) {
    return screens(evidence, run)
        .map(
            mounted ->
                SetUp.between(mounted, ScreenKey.of(run.print()), run.press(), evidence.shop()));
  }

  private static Optional<List<ScreenKey>> screens(Evidence evidence, RunFacts run) {
    if (evidence.isFrozen(run.id())) {
      return evidence.published().flatMap(plan -> plan.screensBefore(run.id()));
    }
    Optional<RunFacts> before = evidence.before(run);
    boolean empty = before.isEmpty() || wentElsewhere(evidence, before.get(), run);
    return Optional.of(empty ? List.of() : ScreenKey.of(before.get().print()));
  }

  /** Whether the screens that both runs need were on another press between them. */
  private static boolean wentElsewhere(Evidence evidence, RunFacts before, RunFacts run) {
    List<ScreenKey> screens = ScreenKey.of(run.print());
    return ScreenKey.of(before.print()).equals(screens)
        && evidence.runs().stream()
            .anyMatch(
                other ->
                    !other.press().id().equals(run.press().id())
                        && other.setUpStart() > before.setUpStart()
                        && other.setUpStart() < run.setUpStart()
                        && ScreenKey.of(other.print()).equals(screens));
  }
}
