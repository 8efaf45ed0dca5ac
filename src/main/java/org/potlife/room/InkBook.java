package org.potlife.room;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.potlife.ink.InkReport;
import org.potlife.ink.LearnedGrams;

/** The ink room's book: what became of every batch and container. */
public interface InkBook {

  /** The batch or container of this name, if anything was told of it. */
  Optional<InkContainer> find(String plant, String container);

  /** Batches of the plans that came into the book at or after {@code since}, the newest first. */
  List<InkContainer> listBatches(String plant, Instant since);

  /** Containers on the shelf with something in them, the oldest first. */
  List<InkContainer> listStock(String plant);

  /** Grams per piece that closed runs have taught. */
  List<LearnedGrams> listLearned(String plant);

  /** The book as a plan made now needs it. */
  InkReport reportAt(String plant, Instant now);
}
