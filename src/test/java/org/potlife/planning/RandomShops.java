package org.potlife.planning;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.potlife.dryer.Dryer;
import org.potlife.ink.Component;
import org.potlife.ink.Component.Role;
import org.potlife.ink.Ink;
import org.potlife.ink.InkRoom;
import org.potlife.ink.InkSystem;
import org.potlife.ink.Process;
import org.potlife.screen.Cabinet;
import org.potlife.screen.ClimatePeriod;
import org.potlife.screen.Emulsion;
import org.potlife.screen.FrameStock;
import org.potlife.screen.KeptStencil;
import org.potlife.screen.ScreenRoom;
import org.potlife.screen.StageMinutes;
import org.potlife.shop.Closure;
import org.potlife.shop.PlanSettings;
import org.potlife.shop.Press;
import org.potlife.shop.Shift;
import org.potlife.shop.Shop;

/**
 * Plants as nobody would build them, but might describe them: short pot lives, small containers,
 * few frames, breaks of every length, nights, closures, days of clock change, damp cabinets.
 */
final class RandomShops {

  static final List<FrameStock> MESHES =
      List.of(
          new FrameStock(43.0, 80.0, 1),
          new FrameStock(77.0, 48.0, 1),
          new FrameStock(140.0, 34.0, 1));

  private final Dice dice;
  private final LocalDate day;
  private final ZoneId zone;

  private RandomShops(Dice dice, LocalDate day, ZoneId zone) {
    this.dice = dice;
    this.day = day;
    this.zone = zone;
  }

  /** A plant whose calendars are interesting around this day. */
  static Shop shop(Dice dice, LocalDate day, ZoneId zone, List<KeptStencil> wishes) {
    return new RandomShops(dice, day, zone).shop(wishes);
  }

  private Shop shop(List<KeptStencil> wishes) {
    List<Dryer> dryers = new ArrayList<>();
    for (int i = dice.in(1, 2); i > 0; i--) {
      dryers.add(dryer("D" + i));
    }
    List<Press> presses = new ArrayList<>();
    for (int i = dice.mostly(dice.in(1, 2), 3, 4); i > 0; i--) {
      presses.add(press("P" + i, dice.of(dryers).id()));
    }
    List<InkSystem> systems =
        List.of(
            system("discharge", Process.DISCHARGE),
            system("hasty", Process.DISCHARGE),
            system("water-based", Process.WATER_BASED));
    List<Ink> inks = new ArrayList<>();
    for (String name : List.of("brick", "sand", "sky")) {
      inks.add(ink(name, "discharge"));
    }
    inks.add(ink("flame", "hasty"));
    for (String name : List.of("white", "black", "red")) {
      inks.add(ink(name, "water-based"));
    }
    return new Shop(
        "Random shop",
        zone,
        null,
        presses,
        dryers,
        screenRoom(wishes),
        inkRoom(),
        systems,
        inks,
        null,
        settings());
  }

  private Press press(String id, String dryer) {
    int rate = dice.in(60, 900);
    int firstPiece = dice.mostly(6, 0, 1, 15);
    return new Press(
        id,
        dice.of(12, 12, 10, 8, 5),
        dice.of(400, 400, 290),
        dice.mostly(500, 370),
        dice.percent(85) ? List.of(Process.values()) : List.of(dice.of(Process.values())),
        dice.percent(95) ? List.of() : List.of("shirt"),
        dryer,
        rate,
        dice.mostly(1, null, 20, rate / 2),
        dice.of(10, 0, 25),
        dice.of(5, 0, 8),
        dice.of(2, 0, 4),
        dice.of(3, 0, 7),
        dice.of(6, 0, 9),
        firstPiece,
        dice.of(3, 0, 1, 10, 40),
        dice.of(30, 0, 10, 60),
        null,
        dice.percent(95),
        shifts(),
        closures(20),
        List.of());
  }

  private Dryer dryer(String id) {
    int heated = dice.of(1500, 3000, 4000, 8000);
    return new Dryer(
        id,
        heated,
        heated + dice.in(0, 4000),
        dice.mostly(1200, 700, 2000),
        dice.of(30, 0, 80),
        dice.of(6.0, 1.2, 12.5),
        dice.mostly(60.0, 8.0, 25.0, 120.0),
        dice.of(0.4, 0.25, 0.8),
        dice.of(20.0, 5.0, 35.0),
        dice.of(5, 0, 30));
  }

  private InkSystem system(String id, Process process) {
    int stand = dice.of(15, 0, 5, 45);
    int life = id.equals("hasty") ? dice.in(Math.max(60, stand + 20), 240) : dice.of(720, 240, 480);
    return new InkSystem(
        id,
        process,
        stand,
        life,
        null,
        null,
        null,
        dice.mostly(dice.in(30, 120), 240),
        dice.real(30, 90),
        null);
  }

  private Ink ink(String id, String system) {
    boolean agent = !system.equals("water-based");
    double retarder = dice.of(3.0, 0.5, 5.0);
    double pigment = dice.of(9.0, 2.5, 12.3);
    return new Ink(
        id,
        system,
        "#7f7f7f",
        dice.real(0, 100),
        dice.of(1.05, 0.9, 1.4),
        dice.real(0, 40),
        agent ? dice.of(6.0, 5.0, 8.0, 7.3) : 0.0,
        dice.of(1.0, 0.6, 1.7),
        List.of(
            new Component("base", Role.BASE, 100 - pigment - retarder),
            new Component("pigment", Role.PIGMENT, pigment),
            new Component("retarder", Role.RETARDER, retarder)));
  }

  private InkRoom inkRoom() {
    int charge = dice.of(80, 0, 20, 200);
    int reserve = dice.of(50, 0, 200);
    int container = dice.mostly(20000, 1500, 3000, 8000);
    return new InkRoom(
        dice.in(1, 3),
        container,
        dice.of(1, 5, 50, 100),
        dice.of(8, 0, 3, 20),
        dice.of(4, 0, 10),
        charge,
        dice.of(10.0, 0.0, 33.3),
        reserve,
        shifts(),
        closures(20));
  }

  private ScreenRoom screenRoom(List<KeptStencil> wishes) {
    List<Cabinet> cabinets = new ArrayList<>();
    for (int i = dice.in(1, 2); i > 0; i--) {
      cabinets.add(cabinet("C" + i));
    }
    List<KeptStencil> kept = new ArrayList<>();
    List<FrameStock> frames = new ArrayList<>();
    for (FrameStock mesh : MESHES) {
      int owned = dice.mostly(dice.of(12, 30), 3, 5, 8);
      int left = owned;
      for (KeptStencil wish : wishes) {
        if (left > 0 && wish.meshPerCm().equals(mesh.meshPerCm()) && dice.percent(40)) {
          kept.add(wish);
          left--;
        }
      }
      frames.add(new FrameStock(mesh.meshPerCm(), mesh.threadUm(), owned));
    }
    return new ScreenRoom(
        dice.in(1, 3),
        dice.in(1, 2),
        dice.in(1, 2),
        dice.in(1, 2),
        dice.in(1, 2),
        40.0,
        new Emulsion(
            "random",
            dice.of(1250.0, 300.0, 4000.0),
            dice.of(600.0, 100.0, 2000.0),
            60.0,
            dice.mostly(336, 1, 6, 24)),
        stages(),
        cabinets,
        frames,
        kept,
        shifts(),
        closures(20));
  }

  private StageMinutes stages() {
    return new StageMinutes(
        dice.of(5.0, 0.0, 2.5),
        dice.of(3.0, 0.0, 6.0),
        dice.of(3.0, 0.0, 1.25),
        dice.of(4.0, 0.0, 7.0),
        dice.of(2.0, 0.0),
        dice.of(4.0, 0.0, 10.0),
        dice.of(12.0, 0.0, 30.0));
  }

  private Cabinet cabinet(String id) {
    List<ClimatePeriod> climate = new ArrayList<>();
    int hour = dice.in(0, 3);
    for (int i = dice.in(1, 4); i > 0 && hour < 24; i--) {
      climate.add(
          new ClimatePeriod(
              LocalTime.of(hour, dice.of(0, 30)),
              dice.real(15, 40),
              dice.percent(80) ? dice.real(15, 55) : dice.real(61, 80)));
      hour += dice.in(1, 9);
    }
    return new Cabinet(
        id,
        dice.mostly(20, 3, 5, 8),
        dice.of(1.0, 0.4, 4.0),
        dice.of(1.2, 1.0, 2.0),
        dice.of(20, 0, 5, 90),
        climate);
  }

  private List<Shift> shifts() {
    List<DayOfWeek> all = List.of(DayOfWeek.values());
    List<DayOfWeek> days = dice.mostly(all, all.subList(0, 5), all.subList(1, 4));
    return switch (dice.in(0, 8)) {
      case 0 -> List.of(shift(days, "06:00", "14:00", "10:00", "10:30"));
      case 1 -> List.of(shift(days, "06:00", "22:00", "10:00", "10:15", "17:00", "18:00"));
      case 2 ->
          List.of(
              shift(days, "06:00", "14:00", "09:30", "09:45"),
              shift(days, "14:00", "22:00", "18:00", "18:30"));
      case 3 -> List.of(shift(days, "22:00", "06:00", "23:45", "00:15", "02:15", "02:45"));
      case 4 ->
          List.of(
              shift(days, "07:00", "15:30", "12:00", "12:45"),
              new Shift(days, LocalTime.of(15, 0), LocalTime.of(19, 0), List.of(), true));
      case 5 -> List.of(shift(all, "00:00", "00:00"));
      case 6 -> List.of(shift(days, "05:17", "02:30", "02:00", "02:30", "12:00", "12:20"));
      case 7 -> List.of(shift(days, "08:00", "12:00"), shift(days, "12:40", "17:00"));
      default -> List.of(shift(all, "06:00", "22:00"));
    };
  }

  private static Shift shift(List<DayOfWeek> days, String from, String to, String... breaks) {
    List<Shift.Break> pauses = new ArrayList<>();
    for (int i = 0; i < breaks.length; i += 2) {
      pauses.add(new Shift.Break(LocalTime.parse(breaks[i]), LocalTime.parse(breaks[i + 1])));
    }
    return new Shift(days, LocalTime.parse(from), LocalTime.parse(to), pauses, false);
  }

  private List<Closure> closures(int chance) {
    if (!dice.percent(chance)) {
      return List.of();
    }
    OffsetDateTime from =
        day.atStartOfDay(zone)
            .plusMinutes(dice.in(-600, 3000))
            .plusSeconds(dice.mostly(0, 17))
            .toOffsetDateTime();
    return List.of(new Closure(from, from.plusMinutes(dice.in(1, 1500)), null));
  }

  private PlanSettings settings() {
    return new PlanSettings(
        dice.of(3, 7, 14),
        dice.of(60, 0, 240, 1440),
        dice.mostly(null, List.of(0), List.of(100, 10)),
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null);
  }
}
