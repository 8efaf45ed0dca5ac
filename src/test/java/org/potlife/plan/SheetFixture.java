package org.potlife.plan;

import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.EIGHT;
import static org.potlife.plan.PlanFixture.at;

import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.BeltLine;
import org.potlife.sheet.PlanSheet.ComponentLine;
import org.potlife.sheet.PlanSheet.LateLine;
import org.potlife.sheet.PlanSheet.PlanScore;
import org.potlife.sheet.PlanSheet.RateLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.UnplacedLine;
import org.potlife.sheet.PlanSheet.UseLine;
import org.potlife.sheet.PlanSheet.WaitLine;

/** The plan of {@link PlanFixture}, written by hand: five runs, twelve batches, 13 screens. */
public final class SheetFixture {

  static final String CREST = "HC-2041-crest-front-1";
  static final String ROSTER = "HC-2041-roster-back-1";
  static final String LAMP = "LR-77-lamp-front-1";
  static final String LOAF1 = "MB-118-loaf-front-1";
  static final String LOAF2 = "MB-118-loaf-front-2";
  static final LocalDate EVE = DAY.minusDays(1);
  static final LocalDate NEXT = DAY.plusDays(1);

  private SheetFixture() {}

  /** The plan. */
  public static PlanSheet sheet() {
    return new PlanSheet(
        at(EVE, "16:30"),
        DAY,
        "Europe/Berlin",
        at(DAY.plusDays(21), "00:00"),
        new PlanScore(1, 400, 40, 211.5, Map.of("setUp", 168.0, "inkLost", 43.5)),
        runs(),
        batches(),
        ScreenFixture.screens(),
        belts(),
        List.of(
            new LateLine(
                "LR-77",
                "Lantern Row",
                at("12:00"),
                at("12:40"),
                40,
                400,
                "the belt has no room while HC-2041 is printed")),
        List.of(
            new UnplacedLine(
                "RU-5",
                "stride",
                "back",
                1,
                "R19",
                "the cloth does not discharge: 0 % cotton, at least 80 % is needed")),
        List.of(LOAF1));
  }

  private static List<RunLine> runs() {
    return List.of(
        run(
            CREST,
            "HC-2041",
            "Harbour Choir",
            "crest",
            "front",
            "discharge",
            1,
            1,
            "P1",
            247,
            3,
            List.of("06:10", "07:00", "07:06", "08:24", "08:27", "08:32"),
            DAY,
            8,
            190,
            "dryer",
            screenIds("crest", EIGHT),
            EIGHT,
            EIGHT.stream().map(i -> i + "-1").toList(),
            List.of(new WaitLine("closed", 0, null), new WaitLine("screens", 10, "crest/smoke"))),
        run(
            ROSTER,
            "HC-2041",
            "Harbour Choir",
            "roster",
            "back",
            "discharge",
            1,
            1,
            "P1",
            247,
            3,
            List.of("08:42", "09:40", "09:46", "10:52", "10:55", "11:00"),
            DAY,
            1,
            230,
            "dryer",
            List.of("roster/brick"),
            List.of("brick"),
            List.of("brick-1", "brick-2"),
            List.of(new WaitLine("same-garments", 18, CREST))),
        run(
            LAMP,
            "LR-77",
            "Lantern Row",
            "lamp",
            "front",
            "discharge",
            1,
            1,
            "P1",
            124,
            3,
            List.of("10:55", "11:30", "11:36", "12:37", "12:40", "12:45"),
            DAY,
            2,
            124,
            "dryer",
            screenIds("lamp", List.of("bone", "brick")),
            List.of("bone", "brick"),
            List.of("bone-2", "brick-2"),
            List.of(new WaitLine("dryer", 3, "MB-118"))),
        run(
            LOAF1,
            "MB-118",
            "=Meadow & <b>Bakery</b>",
            "loaf",
            "front",
            "water-based",
            1,
            2,
            "P2",
            206,
            3,
            List.of("06:30", "07:10", "07:16", "08:40", "08:43", "08:48"),
            DAY,
            2,
            145,
            "dryer",
            List.of("K-loaf-chalk", "K-loaf-soot"),
            List.of("chalk", "soot"),
            List.of("chalk-1", "soot-1"),
            List.of()),
        run(
            LOAF2,
            "MB-118",
            "=Meadow & <b>Bakery</b>",
            "loaf",
            "front",
            "water-based",
            2,
            2,
            "P2",
            206,
            0,
            List.of("06:00", "06:00", "06:00", "06:36", "06:39", "06:44"),
            NEXT,
            0,
            343,
            "press",
            List.of("K-loaf-chalk", "K-loaf-soot"),
            List.of("chalk", "soot"),
            List.of("chalk-1", "soot-1"),
            List.of(new WaitLine("garments", 1040, null))));
  }

  private static List<String> screenIds(String design, List<String> inks) {
    return inks.stream().map(ink -> design + "/" + ink).toList();
  }

  private static RunLine run(
      String id,
      String order,
      String customer,
      String design,
      String position,
      String process,
      int lot,
      int lots,
      String press,
      int quantity,
      int trialPieces,
      List<String> times,
      LocalDate day,
      int screensToChange,
      int ratePerHour,
      String limitedBy,
      List<String> screens,
      List<String> inks,
      List<String> batches,
      List<WaitLine> waits) {
    List<OffsetDateTime> t = times.stream().map(time -> at(day, time)).toList();
    int setUpMinutes = (int) Duration.between(t.get(0), t.get(2)).toMinutes();
    return new RunLine(
        id,
        order,
        customer,
        design,
        position,
        process,
        lot,
        lots,
        press,
        "D1",
        quantity,
        trialPieces,
        t.get(0),
        t.get(1),
        t.get(2),
        t.get(3),
        t.get(4),
        t.get(5),
        setUpMinutes,
        screensToChange,
        ratePerHour,
        limitedBy,
        List.of(new RateLine(t.get(2), t.get(3), ratePerHour)),
        screens,
        inks,
        batches,
        waits);
  }

  private static List<BatchLine> batches() {
    List<BatchLine> batches = new ArrayList<>();
    for (int i = 0; i < EIGHT.size(); i++) {
      String ink = EIGHT.get(i);
      OffsetDateTime mix = at("06:00").plusMinutes(i / 2 * 4L);
      UseLine crest = new UseLine(CREST, at("07:00"), at("08:24"), 1500, 80);
      List<UseLine> uses =
          ink.equals("brick")
              ? List.of(crest, new UseLine(ROSTER, at("09:40"), at("10:10"), 700, 80))
              : List.of(crest);
      batches.add(
          discharge(ink + "-1", ink, mix, at("06:28").plusMinutes(i / 2 * 4L), i % 2 + 1, uses));
    }
    batches.add(
        discharge(
            "brick-2",
            "brick",
            at("09:25"),
            at("09:33"),
            1,
            List.of(
                new UseLine(ROSTER, at("10:10"), at("10:52"), 800, 0),
                new UseLine(LAMP, at("11:30"), at("12:37"), 420, 80))));
    batches.add(
        discharge(
            "bone-2",
            "bone",
            at(EVE, "17:00"),
            at("10:58:30"),
            2,
            List.of(new UseLine(LAMP, at("11:30"), at("12:37"), 430, 80))));
    for (String ink : List.of("chalk", "soot")) {
      batches.add(plain(ink + "-1", ink, at("06:20")));
    }
    return batches;
  }

  private static BatchLine discharge(
      String id,
      String ink,
      OffsetDateTime mixFrom,
      OffsetDateTime activateFrom,
      int mixer,
      List<UseLine> uses) {
    int massG = 50 + uses.stream().mapToInt(u -> u.printG() + u.chargeG()).sum();
    int pigmentG = massG * 17 / 100;
    int retarderG = massG * 3 / 100;
    OffsetDateTime activatedAt = activateFrom.plusMinutes(4);
    return new BatchLine(
        id,
        ink,
        "discharge",
        massG,
        List.of(
            new ComponentLine("discharge base", "base", massG - pigmentG - retarderG),
            new ComponentLine(ink + " pigment", "pigment", pigmentG),
            new ComponentLine("retarder", "retarder", retarderG)),
        Math.round(massG * 0.06f),
        6.0,
        retarderG,
        mixFrom,
        activateFrom,
        activatedAt,
        activatedAt.plusMinutes(15),
        activatedAt.plusMinutes(480),
        mixer,
        50,
        uses.stream().map(UseLine::run).toList(),
        uses,
        null,
        null);
  }

  private static BatchLine plain(String id, String ink, OffsetDateTime mixFrom) {
    OffsetDateTime mixed = mixFrom.plusMinutes(8);
    return new BatchLine(
        id,
        ink,
        "water-based",
        4000,
        List.of(
            new ComponentLine("clear base", "base", 3400),
            new ComponentLine(ink + " pigment", "pigment", 600)),
        0,
        0,
        0,
        mixFrom,
        mixed,
        mixed,
        mixed,
        null,
        1,
        50,
        List.of(LOAF1, LOAF2),
        List.of(
            new UseLine(LOAF1, at("07:10"), at("08:40"), 1900, 80),
            new UseLine(LOAF2, at(NEXT, "06:00"), at(NEXT, "06:36"), 1970, 0)),
        null,
        null);
  }

  private static List<BeltLine> belts() {
    return List.of(
        belt("07:00", "07:10", 1.9, 95, 61, 40, List.of(CREST), "dwell"),
        belt("07:10", "08:27", 1.9, 95, 98, 71, List.of(CREST, LOAF1), "area"),
        belt("08:27", "08:43", 2.4, 75, 52, 33, List.of(LOAF1), "dwell"),
        belt("09:40", "10:55", 2.0, 90, 72, 55, List.of(ROSTER), "dwell"),
        belt("11:30", "12:40", 2.0, 90, 40, 88, List.of(LAMP), "heat"));
  }

  private static BeltLine belt(
      String from,
      String to,
      double speed,
      int dwellS,
      int area,
      int heat,
      List<String> runs,
      String bound) {
    return new BeltLine("D1", at(from), at(to), speed, dwellS, area, heat, runs, bound);
  }
}
