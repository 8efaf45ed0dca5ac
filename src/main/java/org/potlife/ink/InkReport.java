package org.potlife.ink;

import java.util.List;
import java.util.Map;

/**
 * What the ink room has told up to a moment, as far as a plan needs it.
 *
 * @param marked batches that are mixed, by name
 * @param stock containers on the shelf with something in them, the oldest first
 * @param learned grams per piece learned from closed runs
 * @param recipeVersions by ink, the version of its recipe that is in force
 */
public record InkReport(
    List<MarkedBatch> marked,
    List<StockInk> stock,
    List<LearnedGrams> learned,
    Map<String, Integer> recipeVersions) {

  /** Nothing was told. */
  public static final InkReport NOTHING = new InkReport(List.of(), List.of(), List.of());

  /** Of a plant whose recipes have no known version. */
  public InkReport(List<MarkedBatch> marked, List<StockInk> stock, List<LearnedGrams> learned) {
    this(marked, stock, learned, Map.of());
  }

  public InkReport {
    marked = marked == null ? List.of() : List.copyOf(marked);
    stock = stock == null ? List.of() : List.copyOf(stock);
    learned = learned == null ? List.of() : List.copyOf(learned);
    recipeVersions = recipeVersions == null ? Map.of() : Map.copyOf(recipeVersions);
  }
}
