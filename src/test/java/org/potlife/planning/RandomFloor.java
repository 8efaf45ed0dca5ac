package org.potlife.planning;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.potlife.floor.Downtime;
import org.potlife.floor.FloorReport;
import org.potlife.floor.RunReport;
import org.potlife.floor.Staffing;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.shop.Press;

/** What the press crew tells while time goes by: starts, counts, finishes, presses down. */
final class RandomFloor {

  private final RandomCase shop;
  private final PlanSheet published;
  private final Dice dice;
  private final long now;
  private final Map<String, RunReport> runs = new HashMap<>();

  private RandomFloor(RandomCase shop, PlanSheet published, Dice dice) {
    this.shop = shop;
    this.published = published;
    this.dice = dice;
    now = shop.plannedAt().getEpochSecond();
    shop.floor().runs().forEach(run -> runs.put(run.run(), run));
  }

  static RandomCase since(RandomCase later, PlanSheet published, Dice dice) {
    return later.with(new RandomFloor(later, published, dice).report());
  }

  private FloorReport report() {
    for (Press press : shop.shop().presses()) {
      if (dice.percent(70)) {
        crewOf(press);
      }
    }
    return new FloorReport(
        List.copyOf(runs.values()), down(shop.floor().down()), staffing(shop.floor().staffing()));
  }

  private void crewOf(Press press) {
    long free = 0;
    for (RunLine line : published.runs()) {
      RunReport before = runs.get(line.id());
      long planned = line.setUpStart().toEpochSecond();
      boolean near = planned < now + 3600L && planned > now - 3 * 86_400L;
      if (!line.press().equals(press.id()) || !near) {
        continue;
      }
      if (before != null && before.ended()) {
        free = Math.max(free, before.endedAt().toEpochSecond());
        continue;
      }
      long start =
          before != null && before.startedAt() != null
              ? before.startedAt().toEpochSecond()
              : Math.max(free, planned + 60L * dice.mostly(dice.in(-10, 15), dice.in(-40, 200)));
      if (start >= now || dice.percent(before == null ? 10 : 0)) {
        continue;
      }
      tell(line, before, start);
      RunReport told = runs.get(line.id());
      if (!told.ended()) {
        // mostly the crew is honest: the next one begins when this one is done
        if (dice.percent(90)) {
          return;
        }
        free = now;
      } else {
        free = told.endedAt().toEpochSecond();
      }
    }
  }

  private void tell(RunLine line, RunReport before, long start) {
    long print = start + line.printStart().toEpochSecond() - line.setUpStart().toEpochSecond();
    long length = line.printEnd().toEpochSecond() - line.printStart().toEpochSecond();
    long real = Math.max(60, length * dice.mostly(dice.in(80, 130), dice.in(30, 400)) / 100);
    boolean started = before == null ? dice.percent(90) : before.startedAt() != null;
    boolean approved =
        print < now && (before != null && before.approvedAt() != null || dice.percent(40));
    OffsetDateTime approvedAt =
        before != null && before.approvedAt() != null ? before.approvedAt() : at(print);
    boolean over = print + real < now && dice.percent(85);
    long counted =
        over ? print + real : Math.max(start, Math.min(now - 1, start + dice.in(0, 9000)));
    int pieces = pieces(line, before, over, counted, print, real);
    int spoiled =
        Math.min(pieces, dice.mostly(pieces * dice.in(0, 3) / 100, pieces / dice.in(2, 9)));
    boolean count = over || pieces > 0 && dice.percent(80);
    if (before != null
        && before.countedAt() != null
        && !over
        && (!count || counted <= before.countedAt().toEpochSecond() || pieces < before.printed())) {
      return;
    }
    if (!started && !approved && !count) {
      started = true;
    }
    long first = count ? counted : now - 1;
    if (approved) {
      first = Math.min(first, approvedAt.toEpochSecond());
    }
    if (started) {
      first = Math.min(first, start);
    }
    runs.put(
        line.id(),
        new RunReport(
            line.id(),
            line.order(),
            line.design(),
            line.position(),
            line.lot(),
            line.press(),
            line.quantity(),
            before == null ? at(first) : before.firstToldAt(),
            started ? at(start) : null,
            approved ? approvedAt : null,
            count ? at(counted) : null,
            count ? pieces - spoiled : 0,
            count ? spoiled : 0,
            over ? at(Math.max(start + 1, counted)) : null));
  }

  private int pieces(
      RunLine line, RunReport before, boolean over, long counted, long print, long real) {
    int known = before == null ? 0 : before.printed();
    if (over) {
      int all = dice.mostly(line.quantity(), Math.max(1, line.quantity() * dice.in(20, 100) / 100));
      return Math.max(known, all);
    }
    long made = counted <= print ? dice.in(0, 4) : line.quantity() * (counted - print) / real;
    return (int) Math.min(line.quantity(), Math.max(known, made));
  }

  private List<Downtime> down(List<Downtime> before) {
    List<Downtime> down = new ArrayList<>(before);
    for (Press press : shop.shop().presses()) {
      if (dice.percent(15)) {
        long from = now - 60L * dice.in(0, 300);
        long to = from + 60L * dice.of(dice.in(5, 40), dice.in(10, 600));
        boolean dryer = dice.percent(25);
        String name = dryer ? press.dryer() : press.id();
        boolean apart =
            before.stream()
                .filter(d -> name.equals(dryer ? d.dryer() : d.press()))
                .allMatch(d -> d.to().toEpochSecond() <= from || d.from().toEpochSecond() >= to);
        boolean twice = down.stream().anyMatch(d -> dryer && name.equals(d.dryer()));
        if (apart && !twice) {
          down.add(
              new Downtime(
                  dryer ? null : name, dryer ? name : null, at(from), at(to), "a chain tore"));
        }
      }
    }
    return down;
  }

  private List<Staffing> staffing(List<Staffing> before) {
    List<Staffing> staffing = new ArrayList<>(before);
    for (Press press : shop.shop().presses()) {
      if (dice.percent(8)) {
        long from = now + 60L * dice.in(-200, 900);
        long to = from + 60L * dice.in(10, 400);
        boolean apart =
            before.stream()
                .filter(s -> s.press().equals(press.id()))
                .allMatch(s -> s.to().toEpochSecond() <= from || s.from().toEpochSecond() >= to);
        if (apart) {
          staffing.add(new Staffing(press.id(), at(from), at(to), dice.percent(50)));
        }
      }
    }
    return staffing;
  }

  private static OffsetDateTime at(long epochSecond) {
    return Instant.ofEpochSecond(epochSecond).atOffset(ZoneOffset.UTC);
  }
}
