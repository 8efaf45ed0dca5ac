package org.potlife.audit;

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
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.sheet.PlanSheet.StepLine;
import org.potlife.sheet.PlanSheet.UnplacedLine;
import org.potlife.sheet.PlanSheet.UseLine;
import org.potlife.sheet.PlanSheet.WaitLine;

/**
 * A good plan for Tuesday, 1 December 2026, worked out by hand.
 *
 * <pre>
 * P1  07:00 crest (2 screens, 26 min)   07:37:48 wave lot 1 (1 on, 2 off, one wash to darker: 28 min)
 *     08:46:12 wave lot 2 (no set-up, over the break 09:00-09:30, until 09:57)
 * P2  06:00 stars (kept stencil, 21 min, late)   07:40 list, on the back of crest's garments, held
 *     to 340/h by the belt while wave prints 300/h:
 *     300/60 * 0.75/4 + 340/60 * 0.75/4 = 0.9375 + 1.0625 = 2.0 m/min
 * </pre>
 *
 * <p>Long, because every time and mass of the plan stands in one place, to be checked by hand.
 */
final class GoodPlan {

  static final String CREST = "HC-1.crest.front.1";
  static final String LIST = "HC-1.list.back.1";
  static final String WAVE_1 = "GS-2.wave.front.1";
  static final String WAVE_2 = "GS-2.wave.front.2";
  static final String STARS = "LT-3.stars.front.1";

  private GoodPlan() {}

  static PlanSheet sheet() {
    return new PlanSheet(
        mon("18:00:00"),
        LocalDate.of(2026, 12, 1),
        "Europe/Berlin",
        SmallShop.at("2026-12-08T00:00:00"),
        new PlanScore(1, 45, 9, 0, Map.of()),
        runs(),
        batches(),
        screens(),
        belts(),
        // due 07:00, off the belt 07:08:24; weight of priority 2 is 5
        List.of(
            new LateLine(
                "LT-3", "Lantern Tour", tue("07:00:00"), tue("07:08:24"), 9, 45, "closed")),
        List.of(new UnplacedLine("UN-4", "lamp", "front", 1, "R18", "trial print is open")),
        List.of());
  }

  static OffsetDateTime mon(String time) {
    return SmallShop.at("2026-11-30T" + time);
  }

  static OffsetDateTime tue(String time) {
    return SmallShop.at("2026-12-01T" + time);
  }

  private static List<RunLine> runs() {
    return List.of(
        // 59 pieces at 300/h are 708 s
        run(CREST, "discharge", 1, "P1", 62, 3, 26, 2, 300, "press")
            .times("07:00:00", "07:20:00", "07:26:00", "07:37:48", "07:40:03", "07:45:03")
            .rates("07:26:00 07:37:48")
            .on("sun brick", "crest-sun crest-brick", "b-sun b-brick-1")
            .waits("closed 360", "screens 60")
            .line(),
        // 202 pieces at 300/h are 2424 s
        run(WAVE_1, "discharge", 2, "P1", 205, 3, 28, 1, 300, "press")
            .times("07:37:48", "07:59:48", "08:05:48", "08:46:12", "08:48:27", "08:53:27")
            .rates("08:05:48 08:46:12")
            .on("brick", "wave-brick", "b-brick-1")
            .line(),
        // 204 pieces at 300/h are 2448 s: 828 s before the break, 1620 s after it
        run(WAVE_2, "discharge", 2, "P1", 204, 0, 0, 0, 300, "press")
            .times("08:46:12", "08:46:12", "08:46:12", "09:57:00", "09:59:15", "10:04:15")
            .rates("08:46:12 09:00:00", "09:30:00 09:57:00")
            .on("brick", "wave-brick", "b-brick-1 b-brick-2")
            .line(),
        // 306 pieces at 400/h are 2754 s; 4.5 m at 3.0 m/min are 90 s
        run(STARS, "water-based", 1, "P2", 309, 3, 21, 1, 400, "press")
            .times("06:00:00", "06:15:00", "06:21:00", "07:06:54", "07:08:24", "07:13:24")
            .rates("06:21:00 07:06:54")
            .on("black", "K-7", "b-black")
            .waits("closed 360")
            .line(),
        // 59 pieces at 340/h are 625 s
        run(LIST, "water-based", 1, "P2", 62, 3, 23, 1, 340, "dryer")
            .times("07:40:00", "07:57:00", "08:03:00", "08:13:25", "08:15:40", "08:20:40")
            .rates("08:03:00 08:13:25")
            .on("black", "list-black", "b-black")
            .waits("same-garments 21", "dryer 12")
            .line());
  }

  private static List<BatchLine> batches() {
    return List.of(
        // 374 g + 50 g reserve, rounded up to 10 g
        batch("b-black", "black", "water-based", 430, 56, 0, "390 40")
            .times("05:30:00", "05:38:00", "05:38:00", "05:38:00", null)
            // 0.005 m2 x 61.76 um x 1.05 = 0.324 g; x 309 x 1.1 = 110.2 g
            .use(STARS, "06:15:00", "07:06:54", 111, 80)
            // 1.5 g x 62 x 1.1 = 102.3 g
            .use(LIST, "07:57:00", "08:13:25", 103, 80)
            .line(),
        batch("b-sun", "sun", "discharge", 270, 53, 7, "230 40")
            .times("06:41:00", "06:49:00", "06:53:00", "07:08:00", "12:53:00")
            .use(CREST, "07:20:00", "07:37:48", 137, 80)
            .line(),
        batch("b-brick-1", "brick", "discharge", 1360, 52, 6, "1090 200 70")
            .times("06:53:00", "07:01:00", "07:05:00", "07:20:00", "13:05:00")
            // 0.03 m2 x 0.285 x 136 um x 1.05 = 1.221 g; x 62 x 1.1 = 83.3 g
            .use(CREST, "07:20:00", "07:37:48", 84, 80)
            // 4 g x 205 x 1.1 = 902 g
            .use(WAVE_1, "07:59:48", "08:46:12", 902, 80)
            // 768 s of 4248 s of 897.6 g
            .use(WAVE_2, "08:46:12", "08:59:00", 162, 0)
            .line(),
        batch("b-brick-2", "brick", "discharge", 790, 54, 6, "630 120 40")
            .times("08:32:00", "08:40:00", "08:44:00", "08:59:00", "14:44:00")
            .use(WAVE_2, "08:59:00", "09:57:00", 736, 0)
            .line());
  }

  private static List<ScreenLine> screens() {
    return List.of(
        screen("crest-sun", CREST, 1, 43, 80, "21:08:00", "07:41:48")
            .steps(
                "18:00 18:05",
                "18:10 18:48",
                "18:48 18:51",
                "18:54 20:00",
                "20:00 20:03",
                "20:06 20:10",
                "20:14 20:45",
                "20:45 20:47",
                "20:49 21:08"),
        screen("crest-brick", CREST, 2, 43, 80, "21:12:00", "07:41:48")
            .steps(
                "18:05 18:10",
                "18:10 18:48",
                "18:51 18:54",
                "18:54 20:00",
                "20:03 20:06",
                "20:10 20:14",
                "20:14 20:45",
                "20:47 20:49",
                "21:08 21:12"),
        screen("wave-brick", WAVE_1 + " " + WAVE_2, 1, 43, 80, "21:16:00", "09:59:00")
            .steps(
                "18:10 18:15",
                "18:15 18:48",
                "18:54 18:57",
                "18:57 20:00",
                "20:06 20:09",
                "20:14 20:18",
                "20:18 20:45",
                "20:49 21:06",
                "21:12 21:16"),
        screen("list-black", LIST, 1, 39, 55, "21:20:00", "08:15:25")
            .steps(
                "18:15 18:20",
                "18:20 18:48",
                "18:57 19:00",
                "19:00 20:00",
                "20:09 20:12",
                "20:18 20:22",
                "20:22 20:45",
                "21:06 21:08",
                "21:16 21:20"),
        new ScreenLine(
            "K-7",
            STARS,
            List.of(STARS),
            "black",
            "stars",
            1,
            39,
            55,
            true,
            null,
            tue("07:08:54"),
            List.of()));
  }

  private static List<BeltLine> belts() {
    return List.of(
        belt("06:15:00", "07:08:24", 3.0, 60, 42, heat(400, 0.324), STARS),
        belt("07:20:00", "07:40:03", 2.0, 90, 47, heat(300, 3.221), CREST),
        belt("07:57:00", "07:59:48", 2.0, 90, 5, heat(30, 1.5), LIST),
        belt("07:59:48", "08:15:40", 2.0, 90, 100, heat(300, 4) + heat(340, 1.5), WAVE_1, LIST),
        belt("08:15:40", "08:46:12", 2.0, 90, 47, heat(300, 4), WAVE_1),
        belt("08:46:12", "08:48:27", 2.0, 90, 47, heat(300, 4), WAVE_1, WAVE_2),
        belt("08:48:27", "09:59:15", 2.0, 90, 47, heat(300, 4), WAVE_2));
  }

  /** Percent of 30 kW that pieces an hour take: 65 % of the ink and 7 % of 190 g evaporate. */
  private static double heat(double piecesPerHour, double inkG) {
    double waterKg = (inkG * 0.65 + 190 * 0.07) / 1000;
    double kw = piecesPerHour / 3600 * waterKg * (4.186 * 80 + 2256.47) / 0.4;
    return 100 * kw / 30;
  }

  private static BeltLine belt(
      String from, String to, double speed, int dwellS, int area, double heat, String... runs) {
    return new BeltLine(
        "D1",
        tue(from),
        tue(to),
        speed,
        dwellS,
        area,
        (int) Math.round(heat),
        List.of(runs),
        "dwell");
  }

  private static Run run(
      String id,
      String process,
      int lots,
      String press,
      int quantity,
      int trialPieces,
      int setUpMinutes,
      int screensToChange,
      int rate,
      String limitedBy) {
    return new Run(
        id,
        process,
        lots,
        press,
        quantity,
        trialPieces,
        setUpMinutes,
        screensToChange,
        rate,
        limitedBy);
  }

  private static Batch batch(
      String id, String ink, String process, int massG, int reserveG, int agent, String parts) {
    return new Batch(id, ink, process, massG, reserveG, agent, parts);
  }

  private static ScreenSteps screen(
      String id, String runs, int station, int mesh, int thread, String ready, String released) {
    String[] name = id.split("-");
    return steps -> {
      List<String> used = List.of(runs.split(" "));
      List<StepLine> lines = new ArrayList<>();
      Stage[] stages = Stage.values();
      String[] places = "sink-1 C1 bench-1 C1 exposure-1 booth-1 C1 exposure-1 table-1".split(" ");
      for (int i = 0; i < steps.length; i++) {
        String[] time = steps[i].split(" ");
        lines.add(
            new StepLine(
                stages[i].toString(), mon(time[0] + ":00"), mon(time[1] + ":00"), null, places[i]));
      }
      return new ScreenLine(
          id,
          used.get(0),
          used,
          name[1],
          name[0],
          station,
          mesh,
          thread,
          false,
          mon(ready),
          tue(released),
          lines);
    };
  }

  private interface ScreenSteps {
    ScreenLine steps(String... steps);
  }

  private static final class Run {
    private final RunLine bare;
    private OffsetDateTime[] times;
    private final List<RateLine> rates = new ArrayList<>();
    private final List<WaitLine> waits = new ArrayList<>();
    private List<String> inks;
    private List<String> screens;
    private List<String> batches;

    Run(
        String id,
        String process,
        int lots,
        String press,
        int quantity,
        int trial,
        int setUp,
        int change,
        int rate,
        String limitedBy) {
      String[] name = id.split("\\.");
      bare =
          new RunLine(
              id,
              name[0],
              "",
              name[1],
              name[2],
              process,
              Integer.parseInt(name[3]),
              lots,
              press,
              "D1",
              quantity,
              trial,
              null,
              null,
              null,
              null,
              null,
              null,
              setUp,
              change,
              rate,
              limitedBy,
              null,
              null,
              null,
              null,
              null);
    }

    Run times(String... hours) {
      times = List.of(hours).stream().map(GoodPlan::tue).toArray(OffsetDateTime[]::new);
      return this;
    }

    Run rates(String... stretches) {
      for (String stretch : stretches) {
        String[] time = stretch.split(" ");
        rates.add(new RateLine(tue(time[0]), tue(time[1]), bare.ratePerHour()));
      }
      return this;
    }

    Run on(String inks, String screens, String batches) {
      this.inks = List.of(inks.split(" "));
      this.screens = List.of(screens.split(" "));
      this.batches = List.of(batches.split(" "));
      return this;
    }

    Run waits(String... causes) {
      for (String cause : causes) {
        String[] wait = cause.split(" ");
        waits.add(new WaitLine(wait[0], Long.parseLong(wait[1]), null));
      }
      return this;
    }

    RunLine line() {
      return new RunLine(
          bare.id(),
          bare.order(),
          bare.customer(),
          bare.design(),
          bare.position(),
          bare.process(),
          bare.lot(),
          bare.lots(),
          bare.press(),
          bare.dryer(),
          bare.quantity(),
          bare.trialPieces(),
          times[0],
          times[1],
          times[2],
          times[3],
          times[4],
          times[5],
          bare.setUpMinutes(),
          bare.screensToChange(),
          bare.ratePerHour(),
          bare.limitedBy(),
          rates,
          screens,
          inks,
          batches,
          waits);
    }
  }

  private static final class Batch {
    private final String id;
    private final String ink;
    private final String process;
    private final int massG;
    private final int reserveG;
    private final int agentPercent;
    private final List<ComponentLine> parts = new ArrayList<>();
    private final List<UseLine> uses = new ArrayList<>();
    private OffsetDateTime[] times;

    Batch(String id, String ink, String process, int massG, int reserveG, int agent, String parts) {
      this.id = id;
      this.ink = ink;
      this.process = process;
      this.massG = massG;
      this.reserveG = reserveG;
      this.agentPercent = agent;
      String[] roles = {"base", "pigment", "retarder"};
      String[] masses = parts.split(" ");
      for (int i = 0; i < masses.length; i++) {
        this.parts.add(
            new ComponentLine(ink + " " + roles[i], roles[i], Integer.parseInt(masses[i])));
      }
    }

    Batch times(String mix, String activateFrom, String activatedAt, String ready, String useBy) {
      times =
          new OffsetDateTime[] {
            tue(mix),
            tue(activateFrom),
            tue(activatedAt),
            tue(ready),
            useBy == null ? null : tue(useBy)
          };
      return this;
    }

    Batch use(String run, String from, String to, int printG, int chargeG) {
      uses.add(new UseLine(run, tue(from), tue(to), printG, chargeG));
      return this;
    }

    BatchLine line() {
      int retarder = parts.size() > 2 ? parts.get(2).massG() : 0;
      int agentG = (int) Math.round(massG * agentPercent / 1000.0) * 10;
      return new BatchLine(
          id,
          ink,
          process,
          massG,
          parts,
          agentG,
          agentPercent,
          retarder,
          times[0],
          times[1],
          times[2],
          times[3],
          times[4],
          1,
          reserveG,
          uses.stream().map(UseLine::run).distinct().toList(),
          uses,
          null,
          null);
    }
  }
}
