package org.potlife.ink;

import java.util.List;

/**
 * What the ink room has told up to a moment, as far as a plan needs it.
 *
 * @param marked batches that are mixed, by name
 * @param stock containers on the shelf with something in them, the oldest first
 * @param learned grams per piece learned from closed runs
 */
public record InkReport(
    List<MarkedBatch> marked, List<StockInk> stock, List<LearnedGrams> learned) {

  /** Nothing was told. */
  public static final InkReport NOTHING = new InkReport(List.of(), List.of(), List.of());

  public InkReport {
    marked = marked == null ? List.of() : List.copyOf(marked);
    stock = stock == null ? List.of() : List.copyOf(stock);
    learned = learned == null ? List.of() : List.copyOf(learned);
  }
}
