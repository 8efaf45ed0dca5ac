package org.potlife.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.audit.GoodPlan.CREST;
import static org.potlife.audit.GoodPlan.LIST;
import static org.potlife.audit.GoodPlan.STARS;
import static org.potlife.audit.GoodPlan.WAVE_1;
import static org.potlife.audit.GoodPlan.WAVE_2;
import static org.potlife.audit.GoodPlan.mon;
import static org.potlife.audit.GoodPlan.tue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.potlife.ink.Process;
import org.potlife.order.TrialPrint;
import org.potlife.screen.FrameStock;
import org.potlife.screen.KeptStencil;
import org.potlife.sheet.PlanSheet.ComponentLine;
import org.potlife.sheet.PlanSheet.LateLine;
import org.potlife.sheet.PlanSheet.PlanScore;
import org.potlife.sheet.PlanSheet.RateLine;
import org.potlife.sheet.PlanSheet.UnplacedLine;
import org.potlife.sheet.PlanSheet.UseLine;
import org.potlife.sheet.PlanSheet.WaitLine;
import org.potlife.shop.Closure;

/**
 * The good plan, broken in one way each: the audit names the rule that is broken, and no other.
 *
 * <p>Long, because the list of breaks is one table: whoever adds a rule sees beside it how the
 * others are broken.
 */
class BrokenRulesTest {

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource({"press", "screens", "ink", "dryer", "order"})
  void breaksOneRuleOnly(String rule, String how, UnaryOperator<Audited> change) {
    Audited broken = change.apply(Audited.good());
    assertThat(broken.report().findings())
        .as(how)
        .isNotEmpty()
        .allSatisfy(finding -> assertThat(finding.rule()).isEqualTo(rule))
        .allSatisfy(finding -> assertThat(finding.detail()).isNotBlank());
  }

  private static Arguments broken(String rule, String how, UnaryOperator<Audited> change) {
    return Arguments.of(rule, how, change);
  }

  static Stream<Arguments> press() {
    return Stream.of(
        broken("R1", "more colours than stations", p -> p.press("P1", "stations", 1)),
        broken("R1", "image wider than the press prints", p -> p.press("P1", "printWidthMm", 310)),
        broken(
            "R1", "image higher than the press prints", p -> p.press("P1", "printHeightMm", 380)),
        broken(
            "R1",
            "process not allowed",
            p -> p.press("P2", "processes", List.of(Process.DISCHARGE))),
        broken("R1", "kind of garment", p -> p.press("P2", "garmentKinds", List.of("bag"))),
        broken("R1", "press out of service", p -> p.press("P2", "inService", false)),
        broken("R1", "inks on other stations", p -> p.run(CREST, "inks", List.of("brick", "sun"))),
        broken("R2", "set-up said to be shorter", p -> p.run(WAVE_1, "setUpMinutes", 25)),
        broken("R2", "screens that differ", p -> p.run(WAVE_1, "screensToChange", 2)),
        broken("R2", "trial pieces", p -> p.run(STARS, "trialPieces", 2)),
        broken("R2", "wash-up to darker left out", p -> p.press("P1", "washUpToDarkerMinutes", 4)),
        broken(
            "R2",
            "set-up started too late for its length",
            p ->
                p.run(
                    CREST,
                    "setUpStart",
                    tue("07:05:00"),
                    "waits",
                    List.of(new WaitLine("closed", 425, null)))),
        broken(
            "R2",
            "two runs at a time",
            p -> p.run(LIST, "setUpStart", tue("07:00:00"), "waits", List.of())),
        broken(
            "R2",
            "first piece too early",
            p ->
                p.run(STARS, "firstPieceAt", tue("06:14:58"))
                    .batch(
                        "b-black",
                        b ->
                            Edit.with(
                                b,
                                "uses",
                                Edit.at(b.uses(), 0, u -> Edit.with(u, "from", tue("06:14:58")))))
                    .belt(0, "from", tue("06:14:58"))),
        broken(
            "R3", "pause longer than a run may pause", p -> p.press("P1", "maxPauseMinutes", 20)),
        broken(
            "R3",
            "prints in the break",
            p ->
                p.run(
                    WAVE_2,
                    "rates",
                    List.of(
                        new RateLine(tue("08:46:12"), tue("09:05:00"), 300),
                        new RateLine(tue("09:35:00"), tue("09:57:00"), 300)))),
        broken(
            "R3",
            "prints in a closure",
            p ->
                p.press(
                    "P1",
                    "closures",
                    List.of(new Closure(tue("08:20:00"), tue("08:30:00"), "repair")))));
  }

  static Stream<Arguments> screens() {
    return Stream.of(
        broken(
            "R4",
            "ready after the set-up starts",
            p -> {
              Audited late = p;
              for (String screen : List.of("crest-sun", "crest-brick")) {
                var tape = Stage.TAPE;
                String minute = screen.equals("crest-sun") ? "07:05:00" : "07:09:00";
                late =
                    late.step(screen, tape, "from", tue(minute).minusMinutes(4), "to", tue(minute))
                        .screen(screen, "readyAt", tue(minute));
              }
              return late;
            }),
        broken(
            "R8",
            "ready before it is taped",
            p -> p.screen("crest-sun", "readyAt", mon("21:00:00"))),
        broken(
            "R8",
            "ready long after it is taped",
            p -> p.screen("crest-sun", "readyAt", tue("06:00:00"))),
        broken("R4", "screen of another design", p -> p.screen("wave-brick", "design", "waves")),
        broken(
            "R5",
            "emulsion short of drying",
            p -> {
              Audited early = p;
              for (String s : List.of("crest-sun", "crest-brick", "wave-brick", "list-black")) {
                early = early.step(s, Stage.DRY_COATED, "to", mon("19:56:00"));
              }
              return early;
            }),
        broken(
            "R5",
            "exposed before it is dry",
            p -> p.step("crest-sun", Stage.EXPOSE, "from", mon("19:57:00"), "to", mon("20:00:00"))),
        broken("R5", "reserve of the cabinet", p -> p.cabinet("reserveFactor", 1.3)),
        broken(
            "R5",
            "too humid to dry",
            p ->
                p.cabinet(
                    "climate",
                    Edit.at(
                        p.shop().screenRoom().cabinets().get(0).climate(),
                        1,
                        c -> Edit.with(c, "humidityPercent", 61.0)))),
        broken("R6", "more screens than frames fit", p -> p.cabinet("frames", 3)),
        broken("R6", "gathered for too long", p -> p.cabinet("gatherMinutes", 5)),
        broken(
            "R6",
            "door opened to wet screens",
            p -> p.step("list-black", Stage.DRY_WASHED, "to", mon("20:50:00"))),
        broken("R6", "no such cabinet", p -> p.step("list-black", Stage.DRY_WASHED, "where", "C9")),
        broken(
            "R7",
            "coated screens kept too long",
            p ->
                p.screenRoom(
                    "emulsion", Edit.with(p.shop().screenRoom().emulsion(), "shelfLifeHours", 0))),
        broken("R7", "store too humid", p -> p.screenRoom("storeHumidityPercent", 61.0)),
        broken(
            "R8",
            "taping too short",
            p -> p.step("list-black", Stage.TAPE, "from", mon("21:17:00"))),
        broken("R8", "no such sink", p -> p.step("crest-sun", Stage.DEGREASE, "where", "sink-2")),
        broken(
            "R8",
            "stage left out",
            p ->
                p.screen(
                    "crest-sun",
                    "steps",
                    Edit.without(p.sheet().screens().get(0).steps(), Stage.WASH_OUT.ordinal()))),
        broken(
            "R8",
            "two screens on one bench",
            p -> p.step("crest-brick", Stage.COAT, "from", mon("18:50:00"), "to", mon("18:53:00"))),
        broken(
            "R8",
            "set does not move together",
            p ->
                p.step(
                    "crest-sun", Stage.WASH_OUT, "from", mon("20:05:00"), "to", mon("20:09:00"))),
        broken(
            "R8",
            "a frame too few",
            p ->
                p.screenRoom(
                    "frames",
                    Edit.at(
                        p.shop().screenRoom().frames(), 0, f -> new FrameStock(43.0, 80.0, 2)))),
        broken("R8", "no such kept stencil", p -> p.screenRoom("kept", List.of())),
        broken(
            "R8",
            "kept stencil left unused",
            p ->
                p.screenRoom(
                    "kept",
                    Edit.plus(
                        p.shop().screenRoom().kept(),
                        new KeptStencil("K-8", "wave", "brick", 43.0, 80.0)),
                    "frames",
                    List.of(new FrameStock(43.0, 80.0, 4), new FrameStock(39.0, 55.0, 2)))),
        broken(
            "R8",
            "release before the take-down",
            p -> p.screen("crest-sun", "releasedAt", tue("07:37:48"))));
  }

  static Stream<Arguments> ink() {
    return Stream.of(
        broken("R9", "components do not sum up", p -> component(p, "b-sun", 0, "massG", 240)),
        broken(
            "R9",
            "wrong share",
            p -> component(component(p, "b-sun", 0, "massG", 210), "b-sun", 1, "massG", 60)),
        broken(
            "R9",
            "weighed finer than the scale shows",
            p -> component(component(p, "b-sun", 0, "massG", 234), "b-sun", 1, "massG", 36)),
        broken(
            "R9",
            "weighed in another order",
            p ->
                p.batch(
                    "b-sun",
                    b -> {
                      List<ComponentLine> swapped = new ArrayList<>(b.components());
                      Collections.reverse(swapped);
                      return Edit.with(b, "components", swapped);
                    })),
        broken("R9", "agent by eye", p -> p.batch("b-brick-1", "agentG", 90)),
        broken("R9", "agent beyond the system's limit", p -> p.discharge("agentMaxPercent", 6.5)),
        broken("R9", "retarder beyond the limit", p -> p.discharge("retarderMaxPercent", 3.0)),
        broken("R10", "stand time cut short", p -> p.discharge("standMinutes", 20)),
        broken("R10", "pot life stretched", p -> p.batch("b-sun", "useBy", tue("13:53:00"))),
        broken(
            "R10",
            "drawn past the pot life",
            p ->
                p.discharge("potLifeMinutes", 105)
                    .batch("b-sun", "useBy", tue("08:38:00"))
                    .batch("b-brick-1", "useBy", tue("08:50:00"))
                    .batch("b-brick-2", "useBy", tue("10:29:00"))),
        broken(
            "R10",
            "a gap between two batches",
            p ->
                p.batch(
                    "b-brick-2",
                    b ->
                        Edit.with(
                            b,
                            "uses",
                            Edit.at(b.uses(), 0, u -> Edit.with(u, "from", tue("08:59:05")))))),
        broken(
            "R10",
            "drawn before it is mixed",
            p ->
                p.batch(
                    "b-black",
                    "mixFrom",
                    tue("06:08:00"),
                    "activateFrom",
                    tue("06:16:00"),
                    "activatedAt",
                    tue("06:16:00"),
                    "readyAt",
                    tue("06:16:00"))),
        broken("R11", "screen charge left out", p -> p.inkRoom("screenChargeG", 90)),
        broken("R11", "reserve on reserve", p -> p.inkRoom("reserveG", 40)),
        broken(
            "R11",
            "more ink than the design takes",
            p ->
                p.print(
                    "LT-3",
                    0,
                    "colours",
                    List.of(
                        Edit.with(
                            p.orders().get(2).prints().get(0).colours().get(0),
                            "coveragePercent",
                            9.0)))),
        broken(
            "R11",
            "activated the evening before",
            // the ink room is closed the next morning: else it would also be too early (R13a)
            p ->
                p.discharge("potLifeMinutes", 720)
                    .inkRoom(
                        "closures",
                        List.of(
                            new Closure(mon("22:00:00"), tue("05:30:00"), ""),
                            new Closure(tue("05:38:00"), tue("06:53:00"), "")))
                    .batch("b-brick-1", "useBy", tue("19:05:00"))
                    .batch("b-brick-2", "useBy", tue("20:44:00"))
                    .batch(
                        "b-sun",
                        "mixFrom",
                        mon("21:48:00"),
                        "activateFrom",
                        mon("21:56:00"),
                        "activatedAt",
                        mon("22:00:00"),
                        "readyAt",
                        mon("22:15:00"),
                        "useBy",
                        tue("10:00:00"))),
        broken("R12", "batch larger than a container", p -> p.inkRoom("containerG", 1350)),
        broken("R12", "no such mixer", p -> p.batch("b-sun", "mixer", 2)),
        broken(
            "R12",
            "two jobs of a mixer at once",
            p -> p.batch("b-brick-1", "mixFrom", tue("06:50:00"))),
        broken(
            "R12",
            "ink room closed",
            p ->
                p.inkRoom(
                    "closures",
                    List.of(new Closure(tue("08:35:00"), tue("08:38:00"), "fire drill")))),
        broken(
            "R12",
            "mixing takes longer",
            p -> p.inkRoom("mixMinutes", 9).batch("b-black", "mixFrom", tue("05:29:00"))),
        broken(
            "R13",
            "leftover for another ink",
            p ->
                p.batch(
                        "b-sun",
                        b ->
                            Edit.with(
                                b,
                                "runs",
                                List.of(CREST, LIST),
                                "uses",
                                Edit.plus(
                                    b.uses(),
                                    new UseLine(LIST, tue("08:00:00"), tue("08:00:00"), 0, 0))))
                    .run(LIST, "batches", List.of("b-sun", "b-black"))),
        broken(
            "R13",
            "leftover past its clock",
            p ->
                p.discharge("potLifeMinutes", 114)
                    .batch("b-sun", "useBy", tue("08:47:00"))
                    .batch("b-brick-1", "useBy", tue("08:59:00"))
                    .batch(
                        "b-brick-1",
                        batch ->
                            Edit.with(
                                batch,
                                "uses",
                                Edit.plus(
                                    batch.uses(),
                                    new UseLine(WAVE_2, tue("08:59:01"), tue("08:59:01"), 0, 0))))
                    .batch("b-brick-2", "useBy", tue("10:38:00"))
                    .batch(
                        "b-brick-2",
                        batch ->
                            Edit.with(
                                batch,
                                "uses",
                                Edit.at(
                                    batch.uses(),
                                    0,
                                    use -> Edit.with(use, "from", tue("08:59:01")))))),
        broken(
            "R13",
            "takes up another batch",
            // the recipe asks for it by name, so that it is no question of the recipe
            p ->
                component(p, "b-sun", 0, "name", "b-black")
                    .shop(
                        s ->
                            Edit.with(
                                s,
                                "inks",
                                Edit.at(
                                    s.inks(),
                                    0,
                                    ink ->
                                        Edit.with(
                                            ink,
                                            "recipe",
                                            Edit.at(
                                                ink.recipe(),
                                                0,
                                                c -> Edit.with(c, "name", "b-black"))))))),
        broken(
            "R13a",
            "activated half an hour too early",
            p ->
                p.batch(
                    "b-sun",
                    "mixFrom",
                    tue("06:11:00"),
                    "activateFrom",
                    tue("06:19:00"),
                    "activatedAt",
                    tue("06:23:00"),
                    "readyAt",
                    tue("06:38:00"),
                    "useBy",
                    tue("12:23:00"))),
        broken(
            "R13a",
            "a second mixer stands idle",
            p ->
                p.inkRoom("mixers", 2)
                    .batch(
                        "b-sun",
                        "mixFrom",
                        tue("06:40:00"),
                        "activateFrom",
                        tue("06:48:00"),
                        "activatedAt",
                        tue("06:52:00"),
                        "readyAt",
                        tue("07:07:00"),
                        "useBy",
                        tue("12:52:00"))));
  }

  static Stream<Arguments> dryer() {
    return Stream.of(
        broken(
            "R14",
            "no speed for a run in the tunnel",
            p -> p.sheet("belts", Edit.without(p.sheet().belts(), 4))),
        broken(
            "R14",
            "belt too fast for the dwell",
            p -> p.belt(1, "speedMPerMin", 2.2, "dwellS", 82, "areaPercent", 43)),
        broken("R14", "longer dwell in the data sheet", p -> p.discharge("dwellS", 95)),
        broken("R14", "dwell written wrong", p -> p.belt(1, "dwellS", 95)),
        broken("R14", "run in the tunnel not listed", p -> p.belt(3, "runs", List.of(LIST))),
        broken(
            "R15",
            "more garments than the belt carries",
            p -> {
              Audited slow = p.belt(3, "to", tue("08:10:00"), "speedMPerMin", 1.9, "dwellS", 95);
              return slow.belt(3, "areaPercent", 105)
                  .sheet(
                      "belts",
                      Edit.plus(
                          slow.sheet().belts(),
                          Edit.with(p.sheet().belts().get(3), "from", tue("08:10:00"))));
            }),
        broken("R15", "area written wrong", p -> p.belt(3, "areaPercent", 110)),
        broken("R15", "press is held and does not say so", p -> p.run(LIST, "limitedBy", "press")),
        broken("R15", "mean rate written wrong", p -> p.run(LIST, "ratePerHour", 400)),
        broken("R16", "more water than the dryer can take", p -> p.dryer("usableHeatKw", 20.0)),
        broken("R16", "heat written wrong", p -> p.belt(1, "heatPercent", 99)),
        broken("R16a", "rate below the least", p -> p.press("P2", "minRatePerHour", 350)),
        broken(
            "R16a",
            "off the belt before the belt is through",
            p ->
                p.run(LIST, "offBelt", tue("08:15:30"), "coolAt", tue("08:20:30"))
                    .belt(3, "to", tue("08:15:30"))
                    .belt(4, "from", tue("08:15:30"))),
        broken("R17", "cool too early", p -> p.run(CREST, "coolAt", tue("07:44:00"))),
        broken(
            "R17",
            "printed on warm garments",
            p -> {
              Audited slow = p.dryer("coolMinutes", 17);
              for (var run : p.sheet().runs()) {
                slow = slow.run(run.id(), "coolAt", run.offBelt().plusMinutes(17));
              }
              return slow;
            }),
        broken(
            "R17",
            "not in the listed order",
            p ->
                p.order(
                    "HC-1",
                    o -> Edit.with(o, "prints", List.of(o.prints().get(1), o.prints().get(0))))));
  }

  static Stream<Arguments> order() {
    return Stream.of(
        broken(
            "R18",
            "garments not in house",
            p -> p.garments("HC-1", "availableFrom", tue("07:20:01"))),
        broken("R18", "artwork not approved", p -> p.print("LT-3", 0, "artworkApproved", false)),
        broken(
            "R18", "trial print failed", p -> p.print("GS-2", 0, "trialPrint", TrialPrint.FAILED)),
        broken("R19", "dye that does not discharge", p -> p.garments("GS-2", "dye", "vat")),
        broken(
            "R19",
            "too little cotton",
            // the limit is raised, as less cotton would also hold less water (R16)
            p ->
                p.shop(
                    s ->
                        Edit.with(
                            s, "cloth", Edit.with(s.cloth(), "dischargeMinCottonPercent", 101.0)))),
        broken("R20", "more pieces than blanks", p -> p.garments("HC-1", "blanks", 61)),
        broken("R20", "spoilage left out", p -> p.garments("GS-2", "blanks", 412)),
        broken("R20", "lots that do not agree", p -> p.run(WAVE_2, "lots", 3)),
        broken(
            "R20",
            "rates that do not print all pieces",
            p ->
                p.run(
                        CREST,
                        "rates",
                        List.of(new RateLine(tue("07:26:00"), tue("07:37:48"), 280)),
                        "ratePerHour",
                        280,
                        "limitedBy",
                        "dryer")
                    .belt(1, "areaPercent", 44, "heatPercent", heatOfCrest(p, 280))),
        broken("R21", "late order not listed", p -> p.sheet("late", List.of())),
        broken(
            "R21",
            "lateness made smaller",
            p ->
                p.sheet(
                    "late",
                    Edit.at(
                        p.sheet().late(),
                        0,
                        (LateLine l) -> Edit.with(l, "minutes", 8L, "weightedMinutes", 40L)))),
        broken(
            "R21",
            "order in time listed as late",
            p ->
                p.sheet(
                    "late",
                    Edit.plus(
                        p.sheet().late(),
                        new LateLine(
                            "HC-1", "", tue("14:00:00"), tue("08:15:40"), 1, 5, "dryer")))),
        broken(
            "R21",
            "score that hides lateness",
            p -> p.sheet("score", new PlanScore(1, 0, 0, 0, Map.of()))),
        broken(
            "R21",
            "run of an open order left out",
            p -> p.sheet("unplaced", List.of(), "score", new PlanScore(0, 45, 9, 0, Map.of()))),
        broken(
            "R21",
            "run both placed and unplaced",
            p ->
                p.sheet(
                    "unplaced",
                    Edit.plus(
                        p.sheet().unplaced(),
                        new UnplacedLine("LT-3", "stars", "front", 1, "R18", "no garments")),
                    "score",
                    new PlanScore(2, 45, 9, 0, Map.of()))),
        broken(
            "R21",
            "no cause for having no place",
            p ->
                p.sheet(
                    "unplaced", List.of(new UnplacedLine("UN-4", "lamp", "front", 1, "R18", " ")))),
        broken("R21", "waiting without a cause", p -> p.run(LIST, "waits", List.of())),
        broken("R22", "planned into the past", p -> p.sheet("plannedAt", mon("18:00:01"))),
        broken(
            "R22",
            "press started before the day",
            p ->
                p.sheet("day", tue("12:00:00").toLocalDate().plusDays(1))
                    .run(CREST, "waits", List.of())
                    .run(STARS, "waits", List.of())
                    .run(LIST, "waits", List.of())),
        broken("R22", "beyond the horizon", p -> p.sheet("horizonEnd", tue("09:00:00"))),
        broken("R22", "frozen, but nothing is published", p -> p.sheet("frozen", List.of(STARS))),
        broken("R0", "written for another zone", p -> p.sheet("timeZone", "UTC")),
        broken(
            "R0", "run listed without its batch", p -> p.run(CREST, "batches", List.of("b-sun"))),
        broken("R0", "wrong dryer", p -> p.run(CREST, "dryer", "D2")),
        broken(
            "R0",
            "belt line that ends before it starts",
            p ->
                p.sheet(
                    "belts",
                    Edit.plus(
                        p.sheet().belts(),
                        Edit.with(
                            p.sheet().belts().get(0),
                            "from",
                            tue("12:00:00"),
                            "to",
                            tue("11:00:00"))))));
  }

  private static int heatOfCrest(Audited p, int rate) {
    return p.sheet().belts().get(1).heatPercent() * rate / 300;
  }

  private static Audited component(Audited p, String batch, int index, Object... change) {
    return p.batch(
        batch,
        b -> Edit.with(b, "components", Edit.at(b.components(), index, c -> Edit.with(c, change))));
  }
}
