package org.potlife.audit;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import org.potlife.dryer.Dryer;
import org.potlife.ink.Component;
import org.potlife.ink.Ink;
import org.potlife.ink.InkRoom;
import org.potlife.ink.InkSystem;
import org.potlife.ink.Process;
import org.potlife.order.Colour;
import org.potlife.order.Garments;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.order.TrialPrint;
import org.potlife.screen.Cabinet;
import org.potlife.screen.ClimatePeriod;
import org.potlife.screen.Emulsion;
import org.potlife.screen.FrameStock;
import org.potlife.screen.KeptStencil;
import org.potlife.screen.ScreenRoom;
import org.potlife.screen.StageMinutes;
import org.potlife.shop.PlanSettings;
import org.potlife.shop.Press;
import org.potlife.shop.Shift;
import org.potlife.shop.Shop;

/** Two presses on one dryer, one cabinet, one mixer, and four open orders. */
final class SmallShop {

  static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");

  private SmallShop() {}

  static Shop shop() {
    return new Shop(
        "Small shop",
        BERLIN,
        "EUR",
        List.of(press("P1", 300), press("P2", 400)),
        // 3 m at 90 s are 2.0 m/min; 4 lanes of 590 mm; 4.5 m at 2.0 m/min are 135 s
        List.of(new Dryer("D1", 3000, 4500, 2330, 30, 6.0, 30.0, 0.4, 20.0, 5)),
        new ScreenRoom(
            1,
            1,
            1,
            1,
            1,
            40.0,
            new Emulsion("emulsion", 1250.0, 600.0, 60.0, 336),
            new StageMinutes(5.0, 3.0, 3.0, 4.0, 2.0, 4.0, 12.0),
            List.of(
                new Cabinet(
                    "C1",
                    12,
                    1.0,
                    1.2,
                    20,
                    List.of(
                        new ClimatePeriod(LocalTime.of(6, 0), 25.0, 50.0),
                        new ClimatePeriod(LocalTime.of(20, 0), 25.0, 40.0)))),
            List.of(new FrameStock(43.0, 80.0, 3), new FrameStock(39.0, 55.0, 2)),
            List.of(new KeptStencil("K-7", "stars", "black", 39.0, 55.0)),
            List.of(shift("05:00", "22:00", "20:50-21:05")),
            List.of()),
        new InkRoom(1, 1600, 10, 8, 4, 80, 10.0, 50, List.of(shift("05:00", "22:00")), List.of()),
        List.of(
            new InkSystem("dis", Process.DISCHARGE, 15, 360, 5.0, 8.0, 5.0, 90, 65.0, ""),
            new InkSystem("aqua", Process.WATER_BASED, 0, null, 0.0, 0.0, 5.0, 60, 65.0, "")),
        List.of(
            ink("sun", "dis", 80, 7, "base 86", "pigment 14"),
            ink("brick", "dis", 40, 6, "base 80", "pigment 15", "retarder 5"),
            ink("black", "aqua", 5, 0, "base 90", "pigment 10")),
        null,
        PlanSettings.defaults());
  }

  static List<Order> orders() {
    return List.of(
        new Order(
            "HC-1",
            "Harbour Choir",
            2,
            at("2026-12-01T14:00:00"),
            true,
            garments(60, 70),
            List.of(
                print("crest", "front", Process.DISCHARGE, TrialPrint.PASSED, 300, 400)
                    .colours(
                        new Colour("sun", 20.0, 43.0, 80.0, null, 2.0),
                        new Colour("brick", 25.0, 43.0, 80.0, null, null)),
                print("list", "back", Process.WATER_BASED, null, 250, 300)
                    .colours(new Colour("black", 15.0, 39.0, 55.0, null, 1.5)))),
        new Order(
            "GS-2",
            "Gull School",
            3,
            at("2026-12-02T12:00:00"),
            false,
            garments(400, 409),
            List.of(
                print("wave", "front", Process.DISCHARGE, TrialPrint.PASSED, 350, 400)
                    .colours(new Colour("brick", 40.0, 43.0, 80.0, null, 4.0)))),
        new Order(
            "LT-3",
            "Lantern Tour",
            2,
            at("2026-12-01T07:00:00"),
            false,
            garments(300, 309),
            List.of(
                print("stars", "front", Process.WATER_BASED, null, 200, 250)
                    .colours(new Colour("black", 10.0, 39.0, 55.0, null, null)))),
        new Order(
            "UN-4",
            "Umber Night",
            3,
            at("2026-12-04T12:00:00"),
            false,
            garments(50, 55),
            List.of(
                print("lamp", "front", Process.DISCHARGE, TrialPrint.OPEN, 200, 200)
                    .colours(new Colour("sun", 20.0, 43.0, 80.0, null, 1.0)))));
  }

  static OffsetDateTime at(String local) {
    return java.time.LocalDateTime.parse(local).atZone(BERLIN).toOffsetDateTime();
  }

  /** A shift from Monday to Friday; breaks as {@code from-to}. */
  static Shift shift(String from, String to, String... breaks) {
    List<Shift.Break> pauses =
        List.of(breaks).stream()
            .map(b -> b.split("-"))
            .map(b -> new Shift.Break(LocalTime.parse(b[0]), LocalTime.parse(b[1])))
            .toList();
    return new Shift(
        List.copyOf(EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY)),
        LocalTime.parse(from),
        LocalTime.parse(to),
        pauses,
        false);
  }

  private static Press press(String id, int ratePerHour) {
    return new Press(
        id,
        6,
        400,
        500,
        List.of(Process.DISCHARGE, Process.WATER_BASED),
        List.of(),
        "D1",
        ratePerHour,
        100,
        10,
        5,
        2,
        3,
        6,
        6,
        3,
        30,
        60,
        true,
        List.of(shift("06:00", "18:00", "09:00-09:30", "12:30-13:15")),
        List.of(),
        List.of());
  }

  private static Ink ink(
      String id, String system, double lightness, double agentPercent, String... recipe) {
    List<Component> components =
        List.of(recipe).stream()
            .map(line -> line.split(" "))
            .map(
                line ->
                    new Component(
                        id + " " + line[0],
                        Component.Role.valueOf(line[0].toUpperCase(java.util.Locale.ROOT)),
                        Double.valueOf(line[1])))
            .toList();
    return new Ink(id, system, "#804020", lightness, 1.05, 12.0, agentPercent, 1.0, components);
  }

  private static Garments garments(int quantity, int blanks) {
    return new Garments(
        "heavy tee",
        "shirt",
        "navy",
        20.0,
        100.0,
        "reactive",
        quantity,
        blanks,
        at("2026-11-30T08:00:00"),
        720,
        560,
        190);
  }

  private static PrintOf print(
      String design, String position, Process process, TrialPrint trial, int width, int height) {
    return colours ->
        new Print(design, position, process, true, trial, 1, width, height, 0, List.of(colours));
  }

  private interface PrintOf {
    Print colours(Colour... colours);
  }
}
