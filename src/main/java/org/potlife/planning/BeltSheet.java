package org.potlife.planning;

import java.time.Instant;
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

/** The timetable of each belt: speed by the longest dwell in the tunnel, area and heat in use. */
final class BeltSheet {

  private static final int FULL_PERCENT = 97;

  private final Shop shop;
  private final RunLoad load;
  private final TrialTimes trials;
  private final Map<String, Order> orders;

  BeltSheet(Shop shop, Horizon horizon, RunLoad load, Map<String, Order> orders) {
    this.shop = shop;
    trials = new TrialTimes(shop, horizon);
    this.load = load;
    this.orders = orders;
  }

  private record Tunnel(
      RunLine run, int speedLimit, RunLoad.Flow flow, List<TrialTimes.Part> trial) {

    boolean in(long from, long to) {
      return run.firstPieceAt().toEpochSecond() < to && run.offBelt().toEpochSecond() > from;
    }

    double rate(long from) {
      for (TrialTimes.Part part : trial) {
        if (from >= part.from() && from < part.to()) {
          return part.perHour();
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
        Comparator.comparingLong((BeltLine line) -> line.from().toEpochSecond())
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
                        trials.of(run)));
      }
    }
    return Optional.empty();
  }

  private List<BeltLine> lines(Dryer dryer, List<Tunnel> tunnels) {
    TreeMap<Long, OffsetDateTime> edges = new TreeMap<>();
    for (Tunnel tunnel : tunnels) {
      RunLine run = tunnel.run();
      edge(edges, run.firstPieceAt());
      edge(edges, run.printStart());
      edge(edges, run.offBelt());
      for (TrialTimes.Part part : tunnel.trial()) {
        edge(edges, at(part.from()));
        edge(edges, at(part.to()));
      }
      for (RateLine rate : run.rates()) {
        edge(edges, rate.from());
        edge(edges, rate.to());
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

  private OffsetDateTime at(long epochSecond) {
    return Instant.ofEpochSecond(epochSecond).atZone(shop.timeZone()).toOffsetDateTime();
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
