package org.potlife.audit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * R6: a cabinet is loaded as a batch: one state of wetness, gathered within the cabinet's time,
 * then shut until all is dry; loads do not overlap and fit the cabinet.
 */
final class R6NoWetAmongDry implements Rule {

  @Override
  public String number() {
    return "R6";
  }

  @Override
  public String title() {
    return "No wet among dry";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    Map<String, Load> before = new HashMap<>();
    List<Load> loads = Load.all(evidence);
    for (Load load : loads) {
      notes.check(
          load.cabinet().isPresent(),
          load.screens(),
          "dries in %s, which is no cabinet of the plant",
          load.where());
      load.cabinet()
          .ifPresent(
              cabinet -> {
                notes.check(
                    load.steps().size() <= cabinet.frames(),
                    load.screens(),
                    "%d screens are in cabinet %s, it takes %d",
                    load.steps().size(),
                    cabinet.id(),
                    cabinet.frames());
                notes.check(
                    load.stages().size() == 1,
                    load.screens(),
                    "cabinet %s dries %s together",
                    cabinet.id(),
                    load.stages());
                notes.check(
                    load.lastIn() - load.firstIn() <= cabinet.gatherMinutes() * 60L,
                    load.screens(),
                    "go into cabinet %s from %s to %s, it is gathered for at most %d min",
                    cabinet.id(),
                    evidence.at(load.firstIn()),
                    evidence.at(load.lastIn()),
                    cabinet.gatherMinutes());
                Load last = before.put(cabinet.id(), load);
                if (last != null) {
                  notes.check(
                      load.firstIn() >= last.out(),
                      load.screens(),
                      "go into cabinet %s %s, which is shut on %s until %s",
                      cabinet.id(),
                      evidence.at(load.firstIn()),
                      last.screens(),
                      evidence.at(last.out()));
                }
              });
    }
  }
}
