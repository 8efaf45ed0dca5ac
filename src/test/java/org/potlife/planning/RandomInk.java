package org.potlife.planning;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.potlife.ink.Ink;
import org.potlife.ink.InkReport;
import org.potlife.ink.LearnedGrams;
import org.potlife.ink.MarkedBatch;
import org.potlife.ink.StockInk;
import org.potlife.order.Colour;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.BatchLine;

/** What an ink room may have told by chance: a full shelf, early and late clocks, lost buckets. */
final class RandomInk {

  private RandomInk() {}

  /**
   * @param before what was told before; a mark stays, and what was learned is not forgotten
   */
  static InkReport told(RandomCase shop, InkReport before, long seed) {
    Random random = new Random(seed);
    OffsetDateTime now = shop.plannedAt().atOffset(ZoneOffset.UTC);
    return new InkReport(
        marked(shop.published(), before, now, random),
        stock(shop, random),
        learned(shop, before, random));
  }

  /** The same containers for all plans of a shop; only what is in them differs. */
  private static List<StockInk> stock(RandomCase shop, Random random) {
    Random shelf = new Random(shop.seed());
    OffsetDateTime since = OffsetDateTime.parse("2025-01-07T09:00:00Z");
    List<StockInk> stock = new ArrayList<>();
    for (Ink ink : shop.shop().inks()) {
      int containers = shelf.nextInt(6);
      for (int i = 0; i < containers; i++) {
        boolean light = shelf.nextInt(5) == 0;
        since = since.plusHours(1 + shelf.nextInt(90));
        stock.add(
            new StockInk(
                ink.id() + " shelf " + i,
                ink.id(),
                random.nextInt(3) == 0 ? random.nextInt(120) : random.nextInt(6000),
                since,
                light,
                light ? "an old batch" : null));
      }
    }
    return stock;
  }

  private static List<LearnedGrams> learned(RandomCase shop, InkReport before, Random random) {
    List<LearnedGrams> learned = learnedNow(shop, random);
    Set<List<Object>> renewed =
        learned.stream().map(RandomInk::artwork).collect(Collectors.toSet());
    before.learned().stream()
        .filter(earlier -> !renewed.contains(artwork(earlier)))
        .forEach(learned::add);
    return learned;
  }

  private static List<Object> artwork(LearnedGrams of) {
    return List.of(of.design(), of.position(), of.ink(), of.meshPerCm(), of.threadUm());
  }

  private static List<LearnedGrams> learnedNow(RandomCase shop, Random random) {
    List<LearnedGrams> learned = new ArrayList<>();
    for (Order order : shop.orders()) {
      for (Print print : order.prints()) {
        for (Colour colour : print.colours()) {
          if (random.nextInt(4) == 0) {
            learned.add(
                new LearnedGrams(
                    print.design(),
                    print.position(),
                    colour.ink(),
                    colour.meshPerCm(),
                    colour.threadUm(),
                    print.widthMm(),
                    print.heightMm(),
                    colour.coveragePercent(),
                    print.passes(),
                    0.2 + random.nextDouble() * 6,
                    1 + random.nextInt(9)));
          }
        }
      }
    }
    return learned;
  }

  /** Of the batches that should be activated by now, some are, sooner or later than planned. */
  private static List<MarkedBatch> marked(
      Optional<PlanSheet> published, InkReport before, OffsetDateTime now, Random random) {
    List<MarkedBatch> marked = new ArrayList<>(before.marked());
    Set<String> known =
        before.marked().stream().map(MarkedBatch::batch).collect(Collectors.toSet());
    for (BatchLine batch : published.map(PlanSheet::batches).orElse(List.of())) {
      if (known.contains(batch.id())
          || batch.fromStock()
          || !batch.activatedAt().isBefore(now)
          || random.nextInt(3) == 0) {
        continue;
      }
      OffsetDateTime really = batch.activatedAt().plusMinutes(random.nextInt(60) - 40);
      boolean gone = random.nextInt(5) == 0;
      marked.add(
          new MarkedBatch(
              batch.id(),
              batch.useBy() == null || random.nextInt(4) == 0
                  ? null
                  : really.isAfter(now) ? now : really,
              gone,
              gone ? 0 : batch.massG() + batch.agentG() - random.nextInt(batch.massG() + 1)));
    }
    return marked;
  }
}
