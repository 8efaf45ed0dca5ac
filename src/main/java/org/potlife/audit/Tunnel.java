package org.potlife.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import org.potlife.dryer.Dryer;
import org.potlife.order.Garments;
import org.potlife.shop.ClothRules;

/**
 * What goes through the dryers at every moment, from the rates of the runs alone.
 *
 * <p>During the first-piece minutes of a set-up a run feeds its trial pieces, evenly over the
 * staffed part; afterwards its own rate, nothing in breaks, and nothing after the last stroke.
 */
final class Tunnel {

  /** Specific heat of water, kJ/kgK. */
  private static final double WATER_KJ_PER_KG_K = 4.186;

  /** Latent heat of water at 100 degrees Celsius, kJ/kg (IAPWS-IF97). */
  private static final double LATENT_KJ_PER_KG = 2256.47;

  private Tunnel() {}

  /** The moments of all dryers, in time. */
  static List<TunnelMoment> moments(Evidence evidence) {
    List<TunnelMoment> moments = new ArrayList<>();
    for (Dryer dryer : evidence.shop().dryers()) {
      List<Flow> flows = evidence.runs(dryer).stream().map(run -> Flow.of(run, evidence)).toList();
      List<BeltFacts> belts = evidence.belts(dryer);
      Long from = null;
      for (long to : changes(flows, belts)) {
        if (from != null) {
          moments.add(moment(dryer, from, to, flows, belts));
        }
        from = to;
      }
    }
    return moments;
  }

  /** Runs that are in the tunnel during a setting of the belt. */
  static List<RunFacts> during(Evidence evidence, BeltFacts belt) {
    return evidence.runs(belt.dryer()).stream()
        .filter(run -> run.firstPieceAt() < belt.to() && belt.from() < run.offBelt())
        .toList();
  }

  static List<String> withoutMissing(List<String> names) {
    return names.stream().filter(Objects::nonNull).toList();
  }

  private static TreeSet<Long> changes(List<Flow> flows, List<BeltFacts> belts) {
    TreeSet<Long> changes = new TreeSet<>();
    for (Flow flow : flows) {
      changes.add(flow.run.firstPieceAt());
      changes.add(flow.run.offBelt());
      for (RunFacts.Rate rate : flow.rates) {
        changes.add(rate.from());
        changes.add(rate.to());
      }
    }
    for (BeltFacts belt : belts) {
      changes.add(belt.from());
      changes.add(belt.to());
    }
    return changes;
  }

  private static TunnelMoment moment(
      Dryer dryer, long from, long to, List<Flow> flows, List<BeltFacts> belts) {
    List<RunFacts> inTunnel = new ArrayList<>();
    double area = 0;
    double areaRounding = 0;
    double heat = 0;
    double heatRounding = 0;
    for (Flow flow : flows) {
      if (flow.run.firstPieceAt() < to && from < flow.run.offBelt()) {
        inTunnel.add(flow.run);
        for (RunFacts.Rate rate : flow.rates) {
          if (rate.from() < to && from < rate.to()) {
            area += rate.perHour() * flow.mPerMinPerPieceAnHour;
            areaRounding += Tolerance.PIECES_PER_HOUR * flow.mPerMinPerPieceAnHour;
            heat += rate.perHour() * flow.kwPerPieceAnHour;
            heatRounding += Tolerance.PIECES_PER_HOUR * flow.kwPerPieceAnHour;
          }
        }
      }
    }
    List<BeltFacts> settings =
        belts.stream().filter(belt -> belt.from() < to && from < belt.to()).toList();
    return new TunnelMoment(
        dryer, from, to, inTunnel, settings, area, areaRounding, heat, heatRounding);
  }

  /** What a run lays onto the belt, and what each piece an hour takes of belt and heat. */
  private record Flow(
      RunFacts run,
      List<RunFacts.Rate> rates,
      double mPerMinPerPieceAnHour,
      double kwPerPieceAnHour) {

    static Flow of(RunFacts run, Evidence evidence) {
      List<RunFacts.Rate> rates = new ArrayList<>(run.rates());
      int minutes = run.press().firstPieceMinutes();
      if (minutes > 0 && run.line().trialPieces() > 0) {
        List<Stretch> parts =
            evidence.staffed(run.press()).within(run.firstPieceAt(), run.printStart());
        double seconds =
            evidence.isFact(run)
                ? parts.stream().mapToLong(Stretch::seconds).sum()
                : minutes * 60.0;
        double perHour = run.line().trialPieces() * 3600.0 / seconds;
        for (Stretch part : parts) {
          rates.add(new RunFacts.Rate(part.from(), part.to(), perHour));
        }
      }
      return new Flow(
          run,
          rates,
          run.pitchM() / Math.max(1, run.lanes()) / 60,
          kjPerPiece(run, evidence.shop().cloth()) / run.dryer().efficiency() / 3600);
    }

    private static double kjPerPiece(RunFacts run, ClothRules cloth) {
      double waterG = 0;
      for (int i = 0; i < run.inks().size(); i++) {
        waterG += run.gramsByStation().get(i) * run.systems().get(i).waterPercent() / 100;
      }
      Garments garments = run.order().garments();
      double cotton = garments.cottonPercent() / 100;
      double regain =
          cotton * cloth.cottonRegainPercent() + (1 - cotton) * cloth.otherRegainPercent();
      waterG += garments.massG() * regain / 100;
      return waterG
          / 1000
          * (WATER_KJ_PER_KG_K * (100 - run.dryer().roomTemperatureC()) + LATENT_KJ_PER_KG);
    }
  }
}
