package org.potlife.audit;

import java.util.Optional;
import org.potlife.room.EmulsionReading;
import org.potlife.screen.Cabinet;

/**
 * R5: a screen leaves a drying stage only when it is dry: the vapour pressure deficit of the
 * cabinet's climate, integrated from the shutting of the door, reaches what the coat or the rinse
 * needs, with the cabinet's reserve. The sheet does not say when the door shut: here it shut when
 * the last screen of the load went in. A look at one of its screens overrides the calculation: dry
 * ends it, after a wet one all of it begins anew.
 */
final class R5DryBeforeExposure implements Rule {

  @Override
  public String number() {
    return "R5";
  }

  @Override
  public String title() {
    return "Dry before exposure";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    for (Load load : Load.all(evidence)) {
      load.cabinet().ifPresent(cabinet -> dries(evidence, load, cabinet, notes));
    }
    for (ScreenFacts screen : evidence.screens()) {
      screen
          .step(Stage.DRY_COATED)
          .ifPresent(
              drying ->
                  screen
                      .step(Stage.EXPOSE)
                      .ifPresent(
                          expose ->
                              notes.check(
                                  expose.from() >= drying.to(),
                                  screen.id(),
                                  "is exposed %s, its emulsion is dry %s",
                                  evidence.at(expose.from()),
                                  evidence.at(drying.to()))));
    }
  }

  private static void dries(Evidence evidence, Load load, Cabinet cabinet, Notes notes) {
    Optional<EmulsionReading> look =
        evidence.reports().wasFollowed(load.where(), load.out())
            ? Optional.empty()
            : lastLook(evidence, load);
    boolean over = load.out() <= evidence.plannedAt();
    boolean seenDry = look.isPresent() && look.get().dry();
    // what was out before the planning is judged by looking at it, no longer by the climate
    if (over && (look.isEmpty() || seenDry)) {
      return;
    }
    if (seenDry && load.out() >= look.get().at().toEpochSecond()) {
      return;
    }
    double needed =
        load.stages().stream()
                .mapToDouble(s -> s.dryingPaH(evidence.shop().screenRoom()))
                .max()
                .orElse(0)
            * cabinet.reserveFactor();
    Climate climate =
        new Climate(
            cabinet,
            evidence.shop().screenRoom().emulsion().humidityLimitPercent(),
            evidence.shop().timeZone(),
            evidence.rooms());
    long begins =
        look.isPresent() && !seenDry
            ? Math.max(load.lastIn(), look.get().at().toEpochSecond())
            : load.lastIn();
    boolean published = load.steps().stream().anyMatch(evidence::isPublishedStep);
    long tolerance = published ? Tolerance.NO_NEWS_SECONDS : Tolerance.SECONDS;
    double dried = climate.dryingPaH(begins, load.out() + tolerance);
    notes.check(
        dried >= needed * (1 - Tolerance.ARITHMETIC),
        load.screens(),
        "%s in %s from %s to %s dries %.0f Pa h of the %.0f that it needs",
        load.stages(),
        cabinet.id(),
        evidence.at(begins),
        evidence.at(load.out()),
        dried,
        needed);
  }

  private static Optional<EmulsionReading> lastLook(Evidence evidence, Load load) {
    return load.steps().stream()
        .flatMap(step -> evidence.reports().lastLook(step.screen().id(), step.from()).stream())
        .findFirst();
  }
}
