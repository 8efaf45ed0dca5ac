package org.potlife.room.internal;

import java.util.Optional;
import org.potlife.room.PlannedLife;
import org.potlife.room.ScreenLife;
import org.potlife.room.ScreenStatus;
import org.potlife.room.ScreenStatus.Basis;
import org.potlife.room.ScreenStatus.Mark;
import org.potlife.screen.KeptStencil;
import org.potlife.sheet.PlanSheet.ScreenLine;

/** A screen while plan, set-up and reports are put together. */
final class ScreenDraft {

  private final String id;
  private ScreenLine line;
  private PlannedLife life;
  private KeptStencil stencil;

  ScreenDraft(String id) {
    this.id = id;
  }

  void planned(ScreenLine screen, PlannedLife plannedLife) {
    line = screen;
    life = plannedLife;
  }

  void kept(KeptStencil kept) {
    stencil = kept;
  }

  ScreenStatus status(ScreenHistory all) {
    boolean made = line != null && !line.kept() && !line.steps().isEmpty();
    ScreenHistory history = made ? all.without(id, line.steps().get(0).from()) : all;
    Optional<Mark> reported = history.lastState(id);
    Optional<Mark> tension = history.tension(id);
    // a kept stencil that the plan does not use waits in the store
    PlannedLife otherwise =
        life == null && stencil != null ? new PlannedLife(ScreenLife.READY, null, null) : life;
    return new ScreenStatus(
        id,
        reported.map(Mark::state).orElse(otherwise == null ? null : otherwise.state()),
        reported.isPresent() ? Basis.REPORTED : otherwise == null ? null : Basis.PLANNED,
        reported.map(Mark::at).orElse(otherwise == null ? null : otherwise.since()),
        life == null ? null : life.state(),
        life == null ? null : life.step(),
        history.frame(id).orElse(null),
        line != null ? line.design() : stencil != null ? stencil.design() : null,
        line != null ? line.ink() : stencil != null ? stencil.ink() : null,
        line != null ? (Double) line.meshPerCm() : stencil != null ? stencil.meshPerCm() : null,
        line != null ? (Double) line.threadUm() : stencil != null ? stencil.threadUm() : null,
        stencil != null || (line != null && line.kept()),
        tension.map(Mark::newtonPerCm).orElse(null),
        tension.map(Mark::at).orElse(null),
        history.list(id));
  }
}
