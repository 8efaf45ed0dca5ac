package org.potlife.planning;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.potlife.dryer.Dryer;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.sheet.PlanSheet.BeltLine;
import org.potlife.sheet.PlanSheet.RateLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.shop.Shop;
import org.potlife.simulation.RunSpec.BeltFeed;
import org.potlife.simulation.StaffedTime;

/** The timetable of each belt: speed by the longest dwell in the tunnel, area and heat in use. */
final class BeltSheet {

  private static final int FULL_PERCENT = 97;

  private final Shop shop;
  private final RunLoad load;
  private final Map<String, Order> orders;
  private final MappedProblem mapped;

  BeltSheet(MappedProblem mapped, RunLoad load, Map<String, Order> orders) {
    this.mapped = mapped;
    shop = mapped.request().shop();
    this.load = load;
    this.orders = orders;
  }

  private record Tunnel(
      RunLine run, int speedLimit, RunLoad.Flow flow, double trialRate, List<RateLine> trials) {

    boolean in(long from, long to) {
      return run.firstPieceAt().toEpochSecond() < to && run.offBelt().toEpochSecond() > from;
    }

    double rate(long from) {
      for (RateLine trial : trials) {
        if (from >= trial.from().toEpochSecond() && from < trial.to().toEpochSecond()) {
          return trialRate;
        }
      }
      for (RateLine rate : run.rates()) {
        if (from >= rate.from().toEpochSecond() && from < rate.to().toEpochSecond()) {
          return rate.ratePerHour();
        }
      }
      return 0;
    }
  }

  List<BeltLine> lines(List<RunLine> runs) {
    List<BeltLine> lines = new ArrayList<>();
    for (Dryer dryer : shop.dryers()) {
      List<Tunnel> tunnels = new ArrayList<>();
      for (RunLine run : runs) {
        if (run.dryer().equals(dryer.id())) {
          tunnel(run, dryer).ifPresent(tunnels::add);
        }
      }
      lines.addAll(lines(dryer, tunnels));
    }
    lines.sort(
        Comparator.comparing((BeltLine line) -> line.from().toInstant())
            .thenComparing(BeltLine::dryer));
    return lines;
  }

  private Optional<Tunnel> tunnel(RunLine run, Dryer dryer) {
    Order order = orders.get(run.order());
    for (Print print : order.prints()) {
      if (print.design().equals(run.design()) && print.position().equals(run.position())) {
        BeltFeed feed = load.feed(print, order.garments(), dryer);
        return Optional.ofNullable(feed)
            .map(
                fits ->
                    new Tunnel(
                        run,
                        fits.speedLimit(),
                        load.flow(print, order.garments(), dryer),
                        trialRate(run),
                        trials(run)));
      }
    }
    return Optional.empty();
  }

  /** The trial pieces are spread over the minutes for them; a break may lie in between. */
  private double trialRate(RunLine run) {
    int minutes = shop.findPress(run.press()).orElseThrow().firstPieceMinutes();
    return minutes == 0 ? 0 : run.trialPieces() * 60.0 / minutes;
  }

  /** The staffed parts of the first-piece minutes; what lies before the plan counts as staffed. */
  private List<RateLine> trials(RunLine run) {
    Horizon horizon = mapped.horizon();
    int press = shop.presses().indexOf(shop.findPress(run.press()).orElseThrow());
    StaffedTime staffed = mapped.problem().presses()[press].staffed();
    int until = horizon.seconds(run.printStart());
    List<RateLine> trials = new ArrayList<>();
    int t = horizon.seconds(run.firstPieceAt());
    while (t < until) {
      int from = t < 0 ? t : staffed.next(t);
      int to = t < 0 ? Math.min(0, until) : Math.min(until, staffed.endOfStretch(from));
      if (from >= until || to <= from) {
        break;
      }
      trials.add(new RateLine(horizon.time(from), horizon.time(to), 0));
      t = to;
    }
    return trials;
  }

  private List<BeltLine> lines(Dryer dryer, List<Tunnel> tunnels) {
    TreeMap<Long, OffsetDateTime> edges = new TreeMap<>();
    for (Tunnel tunnel : tunnels) {
      RunLine run = tunnel.run();
      edge(edges, run.firstPieceAt());
      edge(edges, run.printStart());
      edge(edges, run.offBelt());
      for (RateLine rate : run.rates()) {
        edge(edges, rate.from());
        edge(edges, rate.to());
      }
      for (RateLine trial : tunnel.trials()) {
        edge(edges, trial.from());
        edge(edges, trial.to());
      }
    }
    tunnels.sort(Comparator.comparingLong(tunnel -> tunnel.run().firstPieceAt().toEpochSecond()));
    List<BeltLine> lines = new ArrayList<>();
    List<Tunnel> current = new ArrayList<>();
    int next = 0;
    for (Map.Entry<Long, OffsetDateTime> edge : edges.entrySet()) {
      Map.Entry<Long, OffsetDateTime> end = edges.higherEntry(edge.getKey());
      if (end == null) {
        break;
      }
      long from = edge.getKey();
      current.removeIf(tunnel -> tunnel.run().offBelt().toEpochSecond() <= from);
      while (next < tunnels.size()
          && tunnels.get(next).run().firstPieceAt().toEpochSecond() <= from) {
        if (tunnels.get(next).in(from, end.getKey())) {
          current.add(tunnels.get(next));
        }
        next++;
      }
      if (!current.isEmpty()) {
        add(lines, line(dryer, current, edge.getValue(), end.getValue()));
      }
    }
    return lines;
  }

  private static void edge(TreeMap<Long, OffsetDateTime> edges, OffsetDateTime at) {
    edges.put(at.toEpochSecond(), at);
  }

  private static void add(List<BeltLine> lines, BeltLine line) {
    BeltLine last = lines.isEmpty() ? null : lines.get(lines.size() - 1);
    boolean same =
        last != null
            && last.to().isEqual(line.from())
            && last.speedMPerMin() == line.speedMPerMin()
            && last.areaPercent() == line.areaPercent()
            && last.heatPercent() == line.heatPercent()
            && last.runs().equals(line.runs());
    if (!same) {
      lines.add(line);
      return;
    }
    lines.set(
        lines.size() - 1,
        new BeltLine(
            last.dryer(),
            last.from(),
            line.to(),
            last.speedMPerMin(),
            last.dwellS(),
            last.areaPercent(),
            last.heatPercent(),
            last.runs(),
            last.bound()));
  }

  private BeltLine line(Dryer dryer, List<Tunnel> in, OffsetDateTime from, OffsetDateTime to) {
    int max = (int) Math.floor(dryer.maxSpeedMPerMin() * 1e6);
    int speed = max;
    double area = 0;
    double heat = 0;
    for (Tunnel tunnel : in) {
      double rate = tunnel.rate(from.toEpochSecond());
      speed = Math.min(speed, tunnel.speedLimit());
      area += rate * tunnel.flow().areaPerRate();
      heat += rate * tunnel.flow().heatPerRate();
    }
    int areaPercent = (int) Math.round(100 * area / speed);
    int heatPercent = (int) Math.round(100 * heat / Fit.usableHeat(dryer));
    String bound = "none";
    if (heatPercent >= FULL_PERCENT && heatPercent >= areaPercent) {
      bound = "heat";
    } else if (areaPercent >= FULL_PERCENT) {
      bound = "area";
    } else if (speed < max) {
      bound = "dwell";
    }
    double speedMPerMin = speed / 1e6;
    return new BeltLine(
        dryer.id(),
        from,
        to,
        speedMPerMin,
        (int) Math.floor(dryer.heatedLengthMm() / 1000.0 / speedMPerMin * 60 + 1e-6),
        areaPercent,
        heatPercent,
        in.stream().map(tunnel -> tunnel.run().id()).toList(),
        bound);
  }
}
