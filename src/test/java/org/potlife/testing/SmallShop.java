package org.potlife.testing;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.UnaryOperator;
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
import org.potlife.shop.ClothRules;
import org.potlife.shop.PlanSettings;
import org.potlife.shop.Press;
import org.potlife.shop.Shift;
import org.potlife.shop.Shop;

/**
 * A small shop; see the package text. Values left out are the defaults of the records.
 *
 * <p>Long, because all parts of the shop are described in one file: whoever reads a test finds
 * every default in one place.
 */
public final class SmallShop {

  public static final ZoneId ZONE = ZoneId.of("Europe/Vienna");

  /** Tuesday, 1 December 2026. */
  public static final LocalDate DAY = LocalDate.of(2026, 12, 1);

  private final Map<String, PressSpec> presses = new LinkedHashMap<>();
  private final Map<String, DryerSpec> dryers = new LinkedHashMap<>();
  private final Map<String, CabinetSpec> cabinets = new LinkedHashMap<>();
  private final Map<String, InkSpec> inks = new LinkedHashMap<>();
  private final Map<String, SystemSpec> systems = new LinkedHashMap<>();
  private final List<FrameStock> frames = new ArrayList<>();
  private final List<KeptStencil> kept = new ArrayList<>();
  private final ScreenRoomSpec screenRoom = new ScreenRoomSpec();
  private final InkRoomSpec inkRoom = new InkRoomSpec();
  private List<Shift> shifts = List.of(daily("06:00-22:00"));
  private ZoneId zone = ZONE;
  private ClothRules cloth;
  private PlanSettings settings;

  private SmallShop() {
    press("P1", p -> p);
    dryer("D1", d -> d);
    cabinet("C1", c -> c);
    system("discharge", s -> s.process(Process.DISCHARGE));
    system("water-based", s -> s);
    ink("brick", i -> i.lightness(40));
    ink("white", i -> i.system("water-based").lightness(100).agentPercent(0));
  }

  /** A shop of one press. */
  public static SmallShop shop() {
    return new SmallShop();
  }

  /** This time of {@link #DAY}, given as {@code "14:00"}. */
  public static OffsetDateTime at(String time) {
    return at(0, time);
  }

  /** This time so many days after {@link #DAY}; negative days lie before. */
  public static OffsetDateTime at(int daysLater, String time) {
    return DAY.plusDays(daysLater).atTime(LocalTime.parse(time)).atZone(ZONE).toOffsetDateTime();
  }

  /** Staffed every day, times as {@code "06:00-14:00"}. */
  public static Shift daily(String span, String... breaks) {
    return shift(List.of(DayOfWeek.values()), span, false, breaks);
  }

  /** Staffed from Monday to Friday. */
  public static Shift weekdays(String span, String... breaks) {
    return shift(List.of(DayOfWeek.values()).subList(0, 5), span, false, breaks);
  }

  /** Staffed on one day of the week, at extra cost. */
  public static Shift overtime(DayOfWeek day, String span, String... breaks) {
    return shift(List.of(day), span, true, breaks);
  }

  /** Changes or adds a press. */
  public SmallShop press(String id, UnaryOperator<PressSpec> change) {
    return put(presses, id, PressSpec::new, change);
  }

  /** Changes or adds a dryer. */
  public SmallShop dryer(String id, UnaryOperator<DryerSpec> change) {
    return put(dryers, id, DryerSpec::new, change);
  }

  /** Changes or adds a drying cabinet. */
  public SmallShop cabinet(String id, UnaryOperator<CabinetSpec> change) {
    return put(cabinets, id, CabinetSpec::new, change);
  }

  /** Changes or adds an ink; a new one is a discharge ink of the system "discharge". */
  public SmallShop ink(String id, UnaryOperator<InkSpec> change) {
    return put(inks, id, InkSpec::new, change);
  }

  /** Changes or adds an ink system; a new one is water-based. */
  public SmallShop system(String id, UnaryOperator<SystemSpec> change) {
    return put(systems, id, SystemSpec::new, change);
  }

  /** Frames of one mesh; the first call takes the plenty away. */
  public SmallShop frames(double meshPerCm, double threadUm, int count) {
    frames.add(new FrameStock(meshPerCm, threadUm, count));
    return this;
  }

  /** A stencil kept on a frame of 43 threads of 80 um. */
  public SmallShop kept(String design, String ink) {
    kept.add(new KeptStencil("K" + (kept.size() + 1), design, ink, 43.0, 80.0));
    return this;
  }

  public SmallShop screenRoom(UnaryOperator<ScreenRoomSpec> change) {
    change.apply(screenRoom);
    return this;
  }

  public SmallShop inkRoom(UnaryOperator<InkRoomSpec> change) {
    change.apply(inkRoom);
    return this;
  }

  /** Staffed time of every press and room that has none of its own. */
  public SmallShop shifts(Shift... everywhere) {
    shifts = List.of(everywhere);
    return this;
  }

  /** Where the shop's clocks are, if not in {@link #ZONE}. */
  public SmallShop zone(String id) {
    zone = ZoneId.of(id);
    return this;
  }

  public SmallShop cloth(ClothRules rules) {
    cloth = rules;
    return this;
  }

  public SmallShop settings(PlanSettings weights) {
    settings = weights;
    return this;
  }

  /** The shop as the engine and the API take it. */
  public Shop build() {
    return new Shop(
        "Small shop",
        zone,
        null,
        presses.values().stream().map(p -> p.build(shifts)).toList(),
        dryers.values().stream().map(DryerSpec::build).toList(),
        screenRoom.build(
            cabinets.values().stream().map(CabinetSpec::build).toList(),
            frames.isEmpty()
                ? List.of(new FrameStock(43.0, 80.0, 200), new FrameStock(77.0, 48.0, 200))
                : frames,
            kept,
            shifts),
        inkRoom.build(shifts),
        systems.values().stream().map(SystemSpec::build).toList(),
        inks.values().stream().map(InkSpec::build).toList(),
        cloth,
        settings);
  }

  private <S> SmallShop put(
      Map<String, S> specs, String id, Function<String, S> made, UnaryOperator<S> change) {
    change.apply(specs.computeIfAbsent(id, made));
    return this;
  }

  private static Shift shift(
      List<DayOfWeek> days, String span, boolean overtime, String... breaks) {
    List<Shift.Break> pauses =
        Arrays.stream(breaks).map(b -> new Shift.Break(from(b), to(b))).toList();
    return new Shift(days, from(span), to(span), pauses, overtime);
  }

  private static LocalTime from(String span) {
    return LocalTime.parse(span.substring(0, span.indexOf('-')));
  }

  private static LocalTime to(String span) {
    return LocalTime.parse(span.substring(span.indexOf('-') + 1));
  }

  /** A press: 6 stations, 360 an hour, both processes, feeds D1. */
  public static final class PressSpec {
    private final String id;
    private int stations = 6;
    private int widthMm = 400;
    private int heightMm = 500;
    private List<Process> processes = List.of(Process.values());
    private List<String> kinds = List.of();
    private String dryer = "D1";
    private int ratePerHour = 360;
    private Integer minRatePerHour;
    private Integer changeoverMinutes;
    private Integer minutesPerScreen;
    private Integer tearDownMinutesPerScreen;
    private Integer toDarkerMinutes;
    private Integer toLighterMinutes;
    private Integer firstPieceMinutes;
    private Integer trialPieces;
    private Integer maxPauseMinutes;
    private Boolean inService;
    private List<Shift> shifts;
    private final List<Closure> closures = new ArrayList<>();

    private PressSpec(String id) {
      this.id = id;
    }

    public PressSpec stations(int count) {
      stations = count;
      return this;
    }

    public PressSpec printArea(int width, int height) {
      widthMm = width;
      heightMm = height;
      return this;
    }

    public PressSpec processes(Process... allowed) {
      processes = List.of(allowed);
      return this;
    }

    public PressSpec kinds(String... garmentKinds) {
      kinds = List.of(garmentKinds);
      return this;
    }

    public PressSpec dryer(String dryerId) {
      dryer = dryerId;
      return this;
    }

    public PressSpec ratePerHour(int pieces) {
      ratePerHour = pieces;
      return this;
    }

    public PressSpec minRatePerHour(int pieces) {
      minRatePerHour = pieces;
      return this;
    }

    public PressSpec changeoverMinutes(int minutes) {
      changeoverMinutes = minutes;
      return this;
    }

    public PressSpec minutesPerScreen(int minutes) {
      minutesPerScreen = minutes;
      return this;
    }

    public PressSpec tearDownMinutesPerScreen(int minutes) {
      tearDownMinutesPerScreen = minutes;
      return this;
    }

    public PressSpec washUpMinutes(int toDarker, int toLighter) {
      toDarkerMinutes = toDarker;
      toLighterMinutes = toLighter;
      return this;
    }

    public PressSpec firstPieceMinutes(int minutes) {
      firstPieceMinutes = minutes;
      return this;
    }

    public PressSpec trialPieces(int pieces) {
      trialPieces = pieces;
      return this;
    }

    public PressSpec maxPauseMinutes(int minutes) {
      maxPauseMinutes = minutes;
      return this;
    }

    public PressSpec outOfService() {
      inService = false;
      return this;
    }

    public PressSpec shifts(Shift... staffed) {
      shifts = List.of(staffed);
      return this;
    }

    public PressSpec closed(OffsetDateTime from, OffsetDateTime to) {
      closures.add(new Closure(from, to, null));
      return this;
    }

    private Press build(List<Shift> everywhere) {
      return new Press(
          id,
          stations,
          widthMm,
          heightMm,
          processes,
          kinds,
          dryer,
          ratePerHour,
          minRatePerHour,
          changeoverMinutes,
          minutesPerScreen,
          tearDownMinutesPerScreen,
          toDarkerMinutes,
          toLighterMinutes,
          firstPieceMinutes,
          trialPieces,
          maxPauseMinutes,
          null,
          inService,
          shifts == null ? everywhere : shifts,
          closures,
          List.of());
    }
  }

  /** A dryer: 4 m heated, two shirts wide, so at 90 s dwell some 420 shirts an hour; 60 kW. */
  public static final class DryerSpec {
    private final String id;
    private int heatedLengthMm = 4000;
    private int beltLengthMm = 6000;
    private int beltWidthMm = 1200;
    private Integer gapMm;
    private Double maxSpeedMPerMin;
    private double usableHeatKw = 60;
    private Double efficiency;
    private Integer coolMinutes;

    private DryerSpec(String id) {
      this.id = id;
    }

    public DryerSpec lengthMm(int heated, int belt) {
      heatedLengthMm = heated;
      beltLengthMm = belt;
      return this;
    }

    public DryerSpec beltWidthMm(int width) {
      beltWidthMm = width;
      return this;
    }

    public DryerSpec gapMm(int gap) {
      gapMm = gap;
      return this;
    }

    public DryerSpec maxSpeedMPerMin(double speed) {
      maxSpeedMPerMin = speed;
      return this;
    }

    public DryerSpec usableHeatKw(double kw) {
      usableHeatKw = kw;
      return this;
    }

    public DryerSpec efficiency(double share) {
      efficiency = share;
      return this;
    }

    public DryerSpec coolMinutes(int minutes) {
      coolMinutes = minutes;
      return this;
    }

    private Dryer build() {
      return new Dryer(
          id,
          heatedLengthMm,
          beltLengthMm,
          beltWidthMm,
          gapMm,
          maxSpeedMPerMin,
          usableHeatKw,
          efficiency,
          null,
          coolMinutes);
    }
  }

  /** A cabinet: 20 frames, 30 C and 30 % all day, so that a coat is dry in about half an hour. */
  public static final class CabinetSpec {
    private final String id;
    private int frames = 20;
    private Double airflowFactor;
    private Double reserveFactor;
    private Integer gatherMinutes;
    private final List<ClimatePeriod> climate = new ArrayList<>();

    private CabinetSpec(String id) {
      this.id = id;
    }

    public CabinetSpec frames(int count) {
      frames = count;
      return this;
    }

    public CabinetSpec airflowFactor(double factor) {
      airflowFactor = factor;
      return this;
    }

    public CabinetSpec reserveFactor(double factor) {
      reserveFactor = factor;
      return this;
    }

    public CabinetSpec gatherMinutes(int minutes) {
      gatherMinutes = minutes;
      return this;
    }

    /** Climate from this time of day on; the first call takes the default away. */
    public CabinetSpec climate(String from, double temperatureC, double humidityPercent) {
      climate.add(new ClimatePeriod(LocalTime.parse(from), temperatureC, humidityPercent));
      return this;
    }

    private Cabinet build() {
      return new Cabinet(
          id,
          frames,
          airflowFactor,
          reserveFactor,
          gatherMinutes,
          climate.isEmpty() ? List.of(new ClimatePeriod(LocalTime.MIDNIGHT, 30.0, 30.0)) : climate);
    }
  }

  /** An ink: system "discharge", lightness 50, 6 % agent, 88 base + 9 pigment + 3 retarder. */
  public static final class InkSpec {
    private final String id;
    private String system = "discharge";
    private double lightness = 50;
    private double agentPercent = 6;
    private Double densityGPerCm3;
    private Double costPerKg;
    private Double transferFactor;
    private final List<Component> recipe = new ArrayList<>();

    private InkSpec(String id) {
      this.id = id;
    }

    public InkSpec system(String systemId) {
      system = systemId;
      return this;
    }

    public InkSpec lightness(double zeroIsBlack) {
      lightness = zeroIsBlack;
      return this;
    }

    public InkSpec agentPercent(double percent) {
      agentPercent = percent;
      return this;
    }

    public InkSpec densityGPerCm3(double density) {
      densityGPerCm3 = density;
      return this;
    }

    public InkSpec costPerKg(double cost) {
      costPerKg = cost;
      return this;
    }

    public InkSpec transferFactor(double factor) {
      transferFactor = factor;
      return this;
    }

    /** One component; the first call takes the default recipe away. */
    public InkSpec component(String name, Role role, double percent) {
      recipe.add(new Component(name, role, percent));
      return this;
    }

    private Ink build() {
      List<Component> usual =
          List.of(
              new Component("base", Role.BASE, 88.0),
              new Component("pigment", Role.PIGMENT, 9.0),
              new Component("retarder", Role.RETARDER, 3.0));
      return new Ink(
          id,
          system,
          "#7f7f7f",
          lightness,
          densityGPerCm3,
          costPerKg,
          agentPercent,
          transferFactor,
          recipe.isEmpty() ? usual : recipe);
    }
  }

  /** An ink system: water-based, dwell 90 s. */
  public static final class SystemSpec {
    private final String id;
    private Process process = Process.WATER_BASED;
    private Integer standMinutes;
    private Integer potLifeMinutes;
    private Integer dwellS;
    private Double waterPercent;

    private SystemSpec(String id) {
      this.id = id;
    }

    public SystemSpec process(Process kind) {
      process = kind;
      return this;
    }

    public SystemSpec standMinutes(int minutes) {
      standMinutes = minutes;
      return this;
    }

    public SystemSpec potLifeMinutes(int minutes) {
      potLifeMinutes = minutes;
      return this;
    }

    public SystemSpec dwellS(int seconds) {
      dwellS = seconds;
      return this;
    }

    public SystemSpec waterPercent(double percent) {
      waterPercent = percent;
      return this;
    }

    private InkSystem build() {
      return new InkSystem(
          id, process, standMinutes, potLifeMinutes, null, null, null, dwellS, waterPercent, null);
    }
  }

  /** The screen room: one place for each kind of work. */
  public static final class ScreenRoomSpec {
    private int places = 1;
    private Double storeHumidityPercent;
    private Emulsion emulsion;
    private StageMinutes stages;
    private List<Shift> shifts;
    private final List<Closure> closures = new ArrayList<>();

    private ScreenRoomSpec() {}

    /** Sinks, benches, exposure units, booths and tables, so many of each. */
    public ScreenRoomSpec placesOfEachKind(int count) {
      places = count;
      return this;
    }

    public ScreenRoomSpec storeHumidityPercent(double percent) {
      storeHumidityPercent = percent;
      return this;
    }

    public ScreenRoomSpec emulsion(Emulsion inUse) {
      emulsion = inUse;
      return this;
    }

    public ScreenRoomSpec stages(StageMinutes minutes) {
      stages = minutes;
      return this;
    }

    public ScreenRoomSpec shifts(Shift... staffed) {
      shifts = List.of(staffed);
      return this;
    }

    public ScreenRoomSpec closed(OffsetDateTime from, OffsetDateTime to) {
      closures.add(new Closure(from, to, null));
      return this;
    }

    private ScreenRoom build(
        List<Cabinet> cabinets,
        List<FrameStock> frames,
        List<KeptStencil> kept,
        List<Shift> everywhere) {
      return new ScreenRoom(
          places,
          places,
          places,
          places,
          places,
          storeHumidityPercent,
          emulsion,
          stages,
          cabinets,
          frames,
          kept,
          shifts == null ? everywhere : shifts,
          closures);
    }
  }

  /** The ink room: one person at one mixer. */
  public static final class InkRoomSpec {
    private Integer mixers;
    private Integer containerG;
    private Integer scaleStepG;
    private Integer mixMinutes;
    private Integer activateMinutes;
    private Integer screenChargeG;
    private Double lossPercent;
    private Integer reserveG;
    private List<Shift> shifts;
    private final List<Closure> closures = new ArrayList<>();

    private InkRoomSpec() {}

    public InkRoomSpec mixers(int people) {
      mixers = people;
      return this;
    }

    public InkRoomSpec containerG(int grams) {
      containerG = grams;
      return this;
    }

    public InkRoomSpec scaleStepG(int grams) {
      scaleStepG = grams;
      return this;
    }

    public InkRoomSpec minutes(int mix, int activate) {
      mixMinutes = mix;
      activateMinutes = activate;
      return this;
    }

    public InkRoomSpec screenChargeG(int grams) {
      screenChargeG = grams;
      return this;
    }

    public InkRoomSpec lossPercent(double percent) {
      lossPercent = percent;
      return this;
    }

    public InkRoomSpec reserveG(int grams) {
      reserveG = grams;
      return this;
    }

    public InkRoomSpec shifts(Shift... staffed) {
      shifts = List.of(staffed);
      return this;
    }

    public InkRoomSpec closed(OffsetDateTime from, OffsetDateTime to) {
      closures.add(new Closure(from, to, null));
      return this;
    }

    private InkRoom build(List<Shift> everywhere) {
      return new InkRoom(
          mixers,
          containerG,
          scaleStepG,
          mixMinutes,
          activateMinutes,
          screenChargeG,
          lossPercent,
          reserveG,
          shifts == null ? everywhere : shifts,
          closures);
    }
  }
}
