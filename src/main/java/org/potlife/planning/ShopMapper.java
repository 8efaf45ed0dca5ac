package org.potlife.planning;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.potlife.dryer.Dryer;
import org.potlife.ink.Ink;
import org.potlife.ink.InkRoom;
import org.potlife.ink.InkSystem;
import org.potlife.room.RoomState;
import org.potlife.screen.Cabinet;
import org.potlife.screen.Emulsion;
import org.potlife.screen.FrameStock;
import org.potlife.screen.ScreenRoom;
import org.potlife.screen.StageMinutes;
import org.potlife.shop.PlanSettings;
import org.potlife.shop.Press;
import org.potlife.shop.Shop;
import org.potlife.simulation.CostSpec;
import org.potlife.simulation.DryerSpec;
import org.potlife.simulation.InkRoomSpec;
import org.potlife.simulation.InkSpec;
import org.potlife.simulation.PressSpec;
import org.potlife.simulation.RunSpec;
import org.potlife.simulation.ScreenRoomSpec;
import org.potlife.simulation.StaffedTime;

/** Maps the shop's set-up to the engine. */
final class ShopMapper {

  private final Shop shop;
  private final Horizon horizon;
  private final List<StaffedTime> staffed;
  private final int openFrom;
  private final RoomState rooms;

  ShopMapper(
      Shop shop, Horizon horizon, List<StaffedTime> staffed, LocalDate day, RoomState rooms) {
    this.shop = shop;
    this.horizon = horizon;
    this.staffed = staffed;
    this.rooms = rooms;
    openFrom = Math.max(0, horizon.startOf(day));
  }

  PressSpec[] presses(int[] lastRun) {
    PressSpec[] specs = new PressSpec[shop.presses().size()];
    for (int i = 0; i < specs.length; i++) {
      Press press = shop.presses().get(i);
      specs[i] =
          new PressSpec(
              staffed.get(i),
              shop.dryers().indexOf(shop.findDryer(press.dryer()).orElseThrow()),
              press.ratePerHour(),
              press.minRatePerHour(),
              press.changeoverMinutes() * 60,
              press.minutesPerScreen() * 60,
              press.tearDownMinutesPerScreen() * 60,
              press.washUpToDarkerMinutes() * 60,
              press.washUpToLighterMinutes() * 60,
              press.firstPieceMinutes() * 60,
              press.trialPieces(),
              openFrom,
              lastRun[i]);
    }
    return specs;
  }

  /** The way over the belt is counted at the slowest speed that any run may ask for. */
  DryerSpec[] dryers(RunSpec[] runs) {
    DryerSpec[] specs = new DryerSpec[shop.dryers().size()];
    for (int i = 0; i < specs.length; i++) {
      Dryer dryer = shop.dryers().get(i);
      int maxSpeed = (int) Math.floor(dryer.maxSpeedMPerMin() * 1e6);
      int slowest = maxSpeed;
      for (RunSpec run : runs) {
        if (run.feeds()[i] != null) {
          slowest = Math.min(slowest, run.feeds()[i].speedLimit());
        }
      }
      int transitS = (int) Math.ceil(dryer.beltLengthMm() * 1000.0 * 60 / slowest);
      specs[i] = new DryerSpec(maxSpeed, Fit.usableHeat(dryer), transitS, dryer.coolMinutes() * 60);
    }
    return specs;
  }

  InkSpec[] inks() {
    return shop.inks().stream().map(this::ink).toArray(InkSpec[]::new);
  }

  private InkSpec ink(Ink ink) {
    InkSystem system = shop.findInkSystem(ink.system()).orElseThrow();
    return new InkSpec(
        system.activated(),
        system.activated() ? system.standMinutes() * 60 : 0,
        system.potLifeMinutes() * 60,
        ink.lightness(),
        Math.round(ink.costPerKg() * 1000));
  }

  ScreenRoomSpec screenRoom() {
    ScreenRoom room = shop.screenRoom();
    StageMinutes stages = room.stages();
    return new ScreenRoomSpec(
        Calendars.room(room.shifts(), room.closures(), horizon),
        new int[] {
          room.degreasingSinks(),
          room.coatingBenches(),
          room.exposureUnits(),
          room.washOutBooths(),
          room.tapingTables()
        },
        new int[] {
          seconds(stages.degrease()),
          seconds(stages.coat()),
          seconds(stages.expose()),
          seconds(stages.washOut()),
          seconds(stages.postExpose()),
          seconds(stages.tape())
        },
        room.emulsion().shelfLifeHours() * 3600,
        seconds(stages.reclaim()),
        room.cabinets().stream()
            .map(cabinet -> cabinet(cabinet, room.emulsion()))
            .toArray(ScreenRoomSpec.Cabinet[]::new),
        room.frames().stream().mapToInt(FrameStock::count).toArray());
  }

  static int seconds(double minutes) {
    return (int) Math.ceil(minutes * 60);
  }

  private ScreenRoomSpec.Cabinet cabinet(Cabinet cabinet, Emulsion emulsion) {
    return new ScreenRoomSpec.Cabinet(
        cabinet.frames(),
        cabinet.gatherMinutes() * 60,
        CabinetClimate.drying(cabinet, emulsion, rooms, horizon),
        Stream.of(ScreenRoomSpec.DryStage.values())
            .mapToDouble(stage -> emulsion.requiredPaH(ScreenSteps.name(stage)))
            .map(paH -> paH * cabinet.reserveFactor() * 3600)
            .toArray());
  }

  InkRoomSpec inkRoom() {
    InkRoom room = shop.inkRoom();
    return new InkRoomSpec(
        Calendars.room(room.shifts(), room.closures(), horizon),
        room.mixers(),
        room.mixMinutes() * 60,
        room.activateMinutes() * 60,
        room.containerG(),
        room.reserveG() + room.scaleStepG() - 1);
  }

  CostSpec costs() {
    PlanSettings settings = shop.settings();
    return new CostSpec(
        milli(settings.setUpPerHour()),
        milli(settings.overtimePerHour()),
        milli(settings.emptyBeltPerHour()),
        milli(settings.runShiftedPerHour()),
        milli(settings.pressChanged()),
        milli(settings.orderSwapped()),
        milli(settings.finishPerHour()),
        milli(settings.thinSlackPerHour()),
        settings.wantedSlackMinutes() * 60,
        milli(settings.lightBeforeDark()));
  }

  private static long milli(double money) {
    return Math.round(money * 1000);
  }
}
