package org.potlife.audit;

/**
 * R5: a screen leaves a drying stage only when it is dry: the vapour pressure deficit of the
 * cabinet's climate, integrated from the shutting of the door, reaches what the coat or the rinse
 * needs, with the cabinet's reserve. The sheet does not say when the door shut: here it shut when
 * the last screen of the load went in.
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
      load.cabinet()
          .ifPresent(
              cabinet -> {
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
                        evidence.shop().timeZone());
                double dried = climate.dryingPaH(load.lastIn(), load.out() + Tolerance.SECONDS);
                notes.check(
                    dried >= needed * (1 - Tolerance.ARITHMETIC),
                    load.screens(),
                    "%s in %s from %s to %s dries %.0f Pa h of the %.0f that it needs",
                    load.stages(),
                    cabinet.id(),
                    evidence.at(load.lastIn()),
                    evidence.at(load.out()),
                    dried,
                    needed);
              });
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
}
