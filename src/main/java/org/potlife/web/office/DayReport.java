package org.potlife.web.office;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.potlife.closeout.CloseOut;
import org.potlife.closeout.CloseOut.CarriedOver;
import org.potlife.closeout.CloseOut.Missed;
import org.potlife.closeout.CloseOut.RunResult;
import org.potlife.closeout.PressFigures;
import org.potlife.order.Promise;
import org.potlife.shop.Press;
import org.potlife.shop.Shop;

/**
 * A close-out as its page shows it. Of very many presses, orders or inks only the first are shown,
 * until all are asked for.
 *
 * @param stage how far the day has come
 * @param whole whether all is shown
 */
public record DayReport(
    CloseOut day, Stage stage, Shop shop, Map<String, Promise> promises, boolean whole) {

  /** Presses that are shown at first. */
  static final int PRESSES = 12;

  /** Orders, runs carried over and inks that are shown at first. */
  static final int ROWS = 25;

  /** How far a day has come. */
  public enum Stage {
    AHEAD,
    UNDER_WAY,
    OVER;

    static Stage of(LocalDate day, LocalDate today) {
      return day.isAfter(today) ? AHEAD : day.equals(today) ? UNDER_WAY : OVER;
    }
  }

  /** One run, plan against actual. */
  public record RunRow(RunResult run) {

    public String startsOff() {
      return off(run.startMinutesLate());
    }

    public String endsOff() {
      return off(run.endMinutesLate());
    }

    public String rate() {
      return run.ratePerHour() == null ? DASH : String.valueOf(Math.round(run.ratePerHour()));
    }

    public String good() {
      return run.good() == null ? DASH : String.valueOf(run.good());
    }

    public String spoiled() {
      return run.spoiled() == null ? DASH : String.valueOf(run.spoiled());
    }

    private static String off(Long minutes) {
      return minutes == null
          ? DASH
          : minutes == 0 ? "0 min" : (minutes > 0 ? "+" : "\u2212") + Math.abs(minutes) + " min";
    }
  }

  /**
   * What is carried over.
   *
   * @param promise of its order by the plan in force; null when it says nothing
   */
  public record CarryRow(CarriedOver run, Promise promise) {}

  private static final String DASH = "\u2013";

  public boolean ahead() {
    return stage == Stage.AHEAD;
  }

  public boolean underWay() {
    return stage == Stage.UNDER_WAY;
  }

  /** Whether neither a plan nor anybody says anything of the day. */
  public boolean silent() {
    return day.runs().isEmpty() && day.promises().due() == 0 && day.inkLoss().inks().isEmpty();
  }

  /** Whether anything was told of a run. */
  public boolean told() {
    return day.runs().stream().anyMatch(run -> run.start() != null);
  }

  /** Runs in a state: ended, running or not-told. */
  public long in(String state) {
    return day.runs().stream().filter(run -> run.state().equals(state)).count();
  }

  /** Presses with a run of the day, in the order of the set-up. */
  private List<String> busyPresses() {
    List<String> order = shop.presses().stream().map(Press::id).toList();
    return day.runs().stream()
        .map(RunResult::press)
        .distinct()
        .sorted(
            Comparator.comparingInt(
                press -> order.contains(press) ? order.indexOf(press) : order.size()))
        .toList();
  }

  /** Presses whose runs are shown. */
  public List<String> drawn() {
    return cut(busyPresses(), PRESSES);
  }

  /** How many presses have a run of the day. */
  public int busy() {
    return busyPresses().size();
  }

  /** Runs of the presses that are shown, press after press. */
  public List<RunRow> runs() {
    List<RunRow> rows = new ArrayList<>();
    for (String press : drawn()) {
      day.runs().stream()
          .filter(run -> run.press().equals(press))
          .forEach(run -> rows.add(new RunRow(run)));
    }
    return rows;
  }

  private List<PressFigures> workingPresses() {
    return day.presses().stream()
        .filter(press -> press.plannedBusyMinutes() > 0 || press.executionMinutes() > 0)
        .toList();
  }

  /** Figures of the presses that are shown. */
  public List<PressFigures> presses() {
    return cut(workingPresses(), PRESSES);
  }

  /** How many presses were staffed or had a run. */
  public int working() {
    return workingPresses().size();
  }

  public IsoFigure[] figures() {
    return IsoFigure.values();
  }

  public List<Missed> missed() {
    return cut(day.promises().missed(), ROWS);
  }

  /** Share of the orders due that were on time in full. */
  public String kept() {
    return day.promises().share() == null ? DASH : IsoFigure.percent(day.promises().share());
  }

  /** Inks of which something came to nothing, the most expensive first. */
  public List<DayLoss> losses() {
    return cut(allLosses(), ROWS);
  }

  /** How many inks lost something. */
  public int lossy() {
    return allLosses().size();
  }

  /** All inks together. */
  public DayLoss loss() {
    return DayLoss.sum(allLosses());
  }

  private List<DayLoss> allLosses() {
    return DayLoss.of(day.inkLoss(), shop);
  }

  /** What is carried over, with the promises of its orders. */
  public List<CarryRow> carried() {
    return cut(day.carryOver(), ROWS).stream()
        .map(run -> new CarryRow(run, promises.get(run.order())))
        .toList();
  }

  /** Garments that are carried over. */
  public int carriedPieces() {
    return day.carryOver().stream().mapToInt(CarriedOver::pieces).sum();
  }

  /** Whether something is left out. */
  public boolean isCut() {
    return !whole
        && (busy() > PRESSES
            || working() > PRESSES
            || lossy() > ROWS
            || day.promises().missed().size() > ROWS
            || day.carryOver().size() > ROWS);
  }

  private <T> List<T> cut(List<T> all, int most) {
    return whole || all.size() <= most ? all : all.subList(0, most);
  }
}
