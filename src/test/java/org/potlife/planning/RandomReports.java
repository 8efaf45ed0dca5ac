package org.potlife.planning;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.potlife.room.BrokenScreen;
import org.potlife.room.ClimateReading;
import org.potlife.room.EmulsionReading;
import org.potlife.room.RoomState;
import org.potlife.screen.Cabinet;
import org.potlife.screen.KeptStencil;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.sheet.PlanSheet.StepLine;

/** What the screen room reports while time goes by: climate, looks at the emulsion, breakages. */
final class RandomReports {

  private RandomReports() {}

  /** The reports before with those of the time until now; two plants in three report nothing. */
  static RoomState since(RandomCase before, PlanSheet published, Instant now, Dice dice) {
    if (dice.percent(66)) {
      return before.rooms();
    }
    long seconds = now.getEpochSecond() - before.plannedAt().getEpochSecond();
    List<ClimateReading> climate = new ArrayList<>(before.rooms().climate());
    for (Cabinet cabinet : before.shop().screenRoom().cabinets()) {
      for (int i = dice.in(0, 3); i > 0; i--) {
        climate.add(
            new ClimateReading(
                cabinet.id(),
                within(before, seconds, dice),
                dice.in(15, 35),
                dice.mostly(dice.in(20, 60), dice.in(50, 90))));
      }
    }
    if (dice.percent(30)) {
      climate.add(
          new ClimateReading(
              ClimateReading.STORE, within(before, seconds, dice), 22, dice.in(30, 80)));
    }
    climate.sort(Comparator.comparing(reading -> reading.at().toInstant()));
    List<EmulsionReading> emulsion = new ArrayList<>(before.rooms().emulsion());
    List<BrokenScreen> broken = new ArrayList<>(before.rooms().broken());
    for (ScreenLine screen : published.screens()) {
      for (StepLine step : screen.steps()) {
        boolean drying = step.step().startsWith("dry-") && step.from().toInstant().isBefore(now);
        if (drying && dice.percent(15)) {
          long from = step.from().toEpochSecond();
          long until = Math.min(now.getEpochSecond(), step.to().toEpochSecond() + 1800);
          emulsion.add(
              new EmulsionReading(
                  screen.id(), at(from + dice.in(0, (int) (until - from))), dice.percent(50)));
        }
      }
      if (dice.percent(4)) {
        broken.add(new BrokenScreen(screen.id(), at(now.getEpochSecond())));
      }
    }
    for (KeptStencil stencil : before.shop().screenRoom().kept()) {
      if (dice.percent(5)) {
        broken.add(new BrokenScreen(stencil.screen(), at(now.getEpochSecond())));
      }
    }
    emulsion.sort(Comparator.comparing(look -> look.at().toInstant()));
    return new RoomState(climate, emulsion, broken);
  }

  private static OffsetDateTime within(RandomCase before, long seconds, Dice dice) {
    return at(before.plannedAt().getEpochSecond() + dice.in(0, (int) seconds));
  }

  private static OffsetDateTime at(long epochSecond) {
    return Instant.ofEpochSecond(epochSecond).atOffset(ZoneOffset.UTC);
  }
}
