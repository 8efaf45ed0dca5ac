package org.potlife.planning;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.potlife.ink.Component;
import org.potlife.ink.Ink;
import org.potlife.ink.InkRoom;
import org.potlife.ink.InkSystem;
import org.potlife.ink.RecipeMass;
import org.potlife.ink.StockInk;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.ComponentLine;
import org.potlife.sheet.PlanSheet.UseLine;
import org.potlife.shop.Shop;
import org.potlife.simulation.Trace;

/** The batches of a plan with their masses. */
final class BatchSheet {

  private final MappedProblem mapped;
  private final Shop shop;
  private final Horizon horizon;
  private final Trace trace;

  BatchSheet(MappedProblem mapped, Trace trace) {
    this.mapped = mapped;
    this.trace = trace;
    shop = mapped.request().shop();
    horizon = mapped.horizon();
  }

  List<BatchLine> lines() {
    List<BatchLine> known =
        mapped.frozen().batches().stream()
            .filter(batch -> shop.findInk(batch.ink()).isPresent())
            .toList();
    Set<String> ids = new HashSet<>(known.stream().map(BatchLine::id).toList());
    mapped.stock().forEach(container -> ids.add(container.container()));
    // the name of a batch that is gone is on a label already
    mapped.request().ink().marked().forEach(mark -> ids.add(mark.batch()));
    List<BatchLine> lines = new ArrayList<>();
    for (Trace.Batch batch : trace.batches()) {
      List<UseLine> uses = new ArrayList<>(batch.uses().stream().map(this::use).toList());
      if (batch.id() < known.size()) {
        BatchLine line = takenOver(known.get(batch.id()), uses);
        // plain ink that nobody draws goes back to stock
        if (line.useBy() != null || !line.uses().isEmpty()) {
          lines.add(line);
        }
      } else if (batch.id() < known.size() + mapped.stock().size()) {
        if (!uses.isEmpty()) {
          lines.add(fromStock(mapped.stock().get(batch.id() - known.size()), uses));
        }
      } else {
        lines.add(line(batch, uses, ids));
      }
    }
    lines.sort(
        Comparator.comparing((BatchLine line) -> line.mixFrom().toInstant())
            .thenComparing(line -> line.activateFrom().toInstant())
            .thenComparing(BatchLine::id));
    return lines;
  }

  private UseLine use(Trace.Use use) {
    return new UseLine(
        mapped.runs().get(use.run()).id(),
        horizon.time(use.from()),
        horizon.time(use.to()),
        use.printG(),
        use.chargeG());
  }

  /** A made batch keeps mass and times; what nobody draws any more counts as reserve. */
  private BatchLine takenOver(BatchLine made, List<UseLine> uses) {
    Set<String> frozen = mapped.frozen().runIds();
    made.uses().stream().filter(use -> frozen.contains(use.run())).forEach(uses::add);
    uses.sort(Comparator.comparing(use -> use.from().toInstant()));
    return made.used(runs(uses), uses);
  }

  /** A container on the shelf is ready since it stands there, a year at most. */
  private BatchLine fromStock(StockInk stock, List<UseLine> uses) {
    uses.sort(Comparator.comparing(use -> use.from().toInstant()));
    Ink ink = shop.findInk(stock.ink()).orElseThrow();
    OffsetDateTime yearAgo = horizon.time(0).minusDays(365);
    OffsetDateTime since =
        stock.since().isBefore(yearAgo)
            ? yearAgo
            : stock.since().atZoneSameInstant(shop.timeZone()).toOffsetDateTime();
    return new BatchLine(
        stock.container(),
        ink.id(),
        shop.findInkSystem(ink.system()).orElseThrow().process().toString(),
        stock.massG(),
        List.of(),
        0,
        0,
        0,
        since,
        since,
        since,
        since,
        null,
        0,
        stock.massG() - drawn(uses),
        runs(uses),
        uses,
        BatchLine.STOCK,
        null);
  }

  private static int drawn(List<UseLine> uses) {
    return uses.stream().mapToInt(use -> use.printG() + use.chargeG()).sum();
  }

  private static List<String> runs(List<UseLine> uses) {
    return uses.stream().map(UseLine::run).distinct().toList();
  }

  private BatchLine line(Trace.Batch batch, List<UseLine> uses, Set<String> ids) {
    uses.sort(Comparator.comparing(use -> use.from().toInstant()));
    InkRoom room = shop.inkRoom();
    Ink ink = shop.inks().get(batch.ink());
    InkSystem system = shop.findInkSystem(ink.system()).orElseThrow();
    int drawn = drawn(uses);
    int massG = RecipeMass.roundUpToStep(drawn + room.reserveG(), room.scaleStepG());
    List<Integer> masses = RecipeMass.components(massG, ink.recipe(), room.scaleStepG());
    List<ComponentLine> components = new ArrayList<>();
    int retarderG = 0;
    for (int i = 0; i < masses.size(); i++) {
      Component component = ink.recipe().get(i);
      String role = component.role().name().toLowerCase(java.util.Locale.ROOT);
      components.add(new ComponentLine(component.name(), role, masses.get(i)));
      retarderG += component.role() == Component.Role.RETARDER ? masses.get(i) : 0;
    }
    boolean activated = system.activated();
    int activateS = activated ? room.activateMinutes() * 60 : 0;
    return new BatchLine(
        id(ink, batch, ids),
        ink.id(),
        system.process().toString(),
        massG,
        components,
        activated ? agentG(massG, ink, system) : 0,
        activated ? ink.agentPercent() : 0,
        retarderG,
        horizon.time(batch.mixFrom()),
        horizon.time(batch.done() - activateS),
        horizon.time(batch.done()),
        horizon.time(batch.ready()),
        activated ? horizon.time(batch.useBy()) : null,
        batch.mixer() + 1,
        massG - drawn,
        runs(uses),
        uses,
        null,
        mapped.request().ink().recipeVersions().get(ink.id()));
  }

  private int agentG(int massG, Ink ink, InkSystem system) {
    return RecipeMass.agentG(
        massG,
        ink.agentPercent(),
        system.agentMinPercent(),
        system.agentMaxPercent(),
        shop.inkRoom().scaleStepG());
  }

  private String id(Ink ink, Trace.Batch batch, Set<String> ids) {
    var day = horizon.time(batch.done());
    String name =
        "%s-%02d%02d%02d"
            .formatted(ink.id(), day.getYear() % 100, day.getMonthValue(), day.getDayOfMonth());
    int number = 1;
    while (!ids.add(name + "-" + number)) {
      number++;
    }
    return name + "-" + number;
  }

  /** Batches by run, in order of use. */
  Map<String, List<String>> byRun(List<BatchLine> batches) {
    Map<String, List<String>> byRun = new HashMap<>();
    Map<String, Map<String, UseLine>> first = new LinkedHashMap<>();
    for (BatchLine batch : batches) {
      for (UseLine use : batch.uses()) {
        first.computeIfAbsent(use.run(), key -> new LinkedHashMap<>()).putIfAbsent(batch.id(), use);
      }
    }
    first.forEach(
        (run, uses) ->
            byRun.put(
                run,
                uses.entrySet().stream()
                    .sorted(Comparator.comparing(entry -> entry.getValue().from().toInstant()))
                    .map(Map.Entry::getKey)
                    .toList()));
    return byRun;
  }
}
