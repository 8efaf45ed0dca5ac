package org.potlife.plan;

import static java.time.DayOfWeek.FRIDAY;
import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.THURSDAY;
import static java.time.DayOfWeek.TUESDAY;
import static java.time.DayOfWeek.WEDNESDAY;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import org.potlife.dryer.Dryer;
import org.potlife.ink.Component;
import org.potlife.ink.Component.Role;
import org.potlife.ink.Ink;
import org.potlife.ink.InkRoom;
import org.potlife.ink.InkSystem;
import org.potlife.ink.Process;
import org.potlife.order.Colour;
import org.potlife.order.Garments;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.order.TrialPrint;
import org.potlife.plan.list.PlanIndex;
import org.potlife.screen.Cabinet;
import org.potlife.screen.ClimatePeriod;
import org.potlife.screen.FrameStock;
import org.potlife.screen.KeptStencil;
import org.potlife.screen.ScreenRoom;
import org.potlife.shop.Press;
import org.potlife.shop.Shift;
import org.potlife.shop.Shop;

/**
 * A small plant with four orders, and a plan for them written by hand in {@link SheetFixture}: one
 * order with eight colours and a second print on the same garments, one with kept stencils and a
 * lot on the next day, one that ends late, and one that has no place.
 */
public final class PlanFixture {

  public static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
  public static final LocalDate DAY = LocalDate.of(2026, 12, 1);
  public static final List<String> EIGHT =
      List.of("bone", "straw", "brick", "plum", "moss", "teal", "sand", "smoke");

  private static final List<Shift> SHIFTS =
      List.of(
          new Shift(
              List.of(MONDAY, TUESDAY, WEDNESDAY, THURSDAY, FRIDAY),
              LocalTime.of(6, 0),
              LocalTime.of(22, 0),
              List.of(new Shift.Break(LocalTime.of(9, 0), LocalTime.of(9, 20))),
              false));

  private PlanFixture() {}

  /** The plan with its shop and orders. */
  public static PlanIndex index() {
    return new PlanIndex(shop(), orders(), SheetFixture.sheet());
  }

  /** A time of the planned day. */
  public static OffsetDateTime at(String time) {
    return at(DAY, time);
  }

  /** A time of a day in the plant's zone. */
  public static OffsetDateTime at(LocalDate day, String time) {
    return LocalDateTime.of(day, LocalTime.parse(time)).atZone(ZONE).toOffsetDateTime();
  }

  /** Three presses, two dryers, ten inks. */
  public static Shop shop() {
    return new Shop(
        "Fixture <Yard>",
        ZONE,
        "EUR",
        List.of(press("P1", 10, "D1", 400), press("P2", 6, "D1", 350), press("P3", 4, "D2", 300)),
        List.of(
            new Dryer("D1", 3000, 4500, 1500, 30, 6.0, 40.0, 0.4, 20.0, 5),
            new Dryer("D2", 2000, 3000, 900, 30, 6.0, 20.0, 0.4, 20.0, 5)),
        screenRoom(),
        new InkRoom(2, 20000, 1, 8, 4, 80, 10.0, 50, SHIFTS, null),
        List.of(
            new InkSystem(
                "lift",
                Process.DISCHARGE,
                15,
                480,
                5.0,
                8.0,
                5.0,
                90,
                65.0,
                "Soft squeegee, one firm stroke, flood after every stroke; never leave the mesh dry."),
            new InkSystem(
                "aqua", Process.WATER_BASED, 0, 720, 0.0, 0.0, 5.0, 75, 60.0, "Flood at once.")),
        inks(),
        null,
        null);
  }

  private static Press press(String id, int stations, String dryer, int ratePerHour) {
    return new Press(
        id,
        stations,
        400,
        500,
        List.of(Process.DISCHARGE, Process.WATER_BASED),
        null,
        dryer,
        ratePerHour,
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
        SHIFTS,
        null,
        null);
  }

  private static ScreenRoom screenRoom() {
    List<ClimatePeriod> climate = List.of(new ClimatePeriod(LocalTime.MIDNIGHT, 28.0, 35.0));
    return new ScreenRoom(
        2,
        1,
        1,
        1,
        1,
        38.0,
        null,
        null,
        List.of(
            new Cabinet("C1", 10, 2.0, 1.2, 20, climate),
            new Cabinet("C2", 6, 2.0, 1.2, 20, climate)),
        List.of(new FrameStock(43.0, 80.0, 20)),
        List.of(
            new KeptStencil("K-loaf-chalk", "loaf", "chalk", 43.0, 80.0),
            new KeptStencil("K-loaf-soot", "loaf", "soot", 43.0, 80.0)),
        SHIFTS,
        null);
  }

  private static List<Ink> inks() {
    return List.of(
        discharge("bone", "#efe6d2", 91),
        discharge("straw", "#e3c565", 80),
        discharge("brick", "#a3412f", 40),
        discharge("plum", "#5b2a4f", 25),
        discharge("moss", "#5f7a3a", 48),
        discharge("teal", "#1f7a7a", 46),
        discharge("sand", "#cdb38b", 74),
        discharge("smoke", "#7c7f86", 53),
        plain("chalk", "#fbfbf8", 98),
        plain("soot", "#161616", 8));
  }

  private static Ink discharge(String id, String swatch, double lightness) {
    return new Ink(
        id,
        "lift",
        swatch,
        lightness,
        null,
        null,
        6.0,
        null,
        List.of(
            new Component("discharge base", Role.BASE, 80.0),
            new Component(id + " pigment", Role.PIGMENT, 17.0),
            new Component("retarder", Role.RETARDER, 3.0)));
  }

  private static Ink plain(String id, String swatch, double lightness) {
    return new Ink(
        id,
        "aqua",
        swatch,
        lightness,
        null,
        null,
        0.0,
        null,
        List.of(
            new Component("clear base", Role.BASE, 85.0),
            new Component(id + " pigment", Role.PIGMENT, 15.0)));
  }

  /** What the plant has to do. */
  public static List<Order> orders() {
    return List.of(
        new Order(
            "HC-2041",
            "Harbour Choir",
            2,
            at(DAY.plusDays(1), "14:00"),
            null,
            garments("heavy tee", "navy", 12, 100, "reactive", 240),
            List.of(
                print("crest", "front", Process.DISCHARGE, TrialPrint.PASSED, 1, EIGHT),
                print(
                    "roster", "back", Process.DISCHARGE, TrialPrint.PASSED, 0, List.of("brick")))),
        new Order(
            "MB-118",
            "=Meadow & <b>Bakery</b>",
            3,
            at(DAY.plusDays(2), "12:00"),
            null,
            garments("apron", "natural", 90, 100, "none", 400),
            List.of(
                print("loaf", "front", Process.WATER_BASED, null, 0, List.of("chalk", "soot")))),
        new Order(
            "LR-77",
            "Lantern Row",
            1,
            at("12:00"),
            null,
            garments("hooded top", "black", 5, 85, "reactive", 120),
            List.of(
                print(
                    "lamp",
                    "front",
                    Process.DISCHARGE,
                    TrialPrint.PASSED,
                    0,
                    List.of("bone", "brick")))),
        new Order(
            "RU-5",
            "Runners' Union",
            4,
            at(DAY.plusDays(1), "10:00"),
            null,
            garments("sports vest", "royal", 30, 0, "disperse", 60),
            List.of(
                print(
                    "stride", "back", Process.DISCHARGE, TrialPrint.PASSED, 0, List.of("teal")))));
  }

  private static Garments garments(
      String style, String colour, double lightness, double cotton, String dye, int quantity) {
    return new Garments(
        style,
        null,
        colour,
        lightness,
        cotton,
        dye,
        quantity,
        quantity + 12,
        at("06:00"),
        720,
        560,
        190);
  }

  private static Print print(
      String design,
      String position,
      Process process,
      TrialPrint trial,
      int flashes,
      List<String> inks) {
    return new Print(
        design,
        position,
        process,
        true,
        trial,
        1,
        300,
        380,
        flashes,
        inks.stream().map(ink -> new Colour(ink, 22.0, 43.0, 80.0, null, null)).toList());
  }
}
