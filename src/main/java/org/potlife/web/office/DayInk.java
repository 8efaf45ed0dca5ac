package org.potlife.web.office;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.potlife.plan.list.InkCautions;
import org.potlife.room.InkContainer;

/**
 * A day's ink.
 *
 * @param open batches of which something should be left
 * @param closed batches that are emptied or discarded
 */
public record DayInk(LocalDate day, List<InkContainer> open, List<InkContainer> closed) {

  /** What is to be kept in mind while some is left. */
  public String caution() {
    return InkCautions.PUT_ASIDE;
  }

  public LocalDate dayBefore() {
    return day.minusDays(1);
  }

  public LocalDate dayAfter() {
    return day.plusDays(1);
  }

  /** Grams weighed in and stirred in. */
  public int madeG() {
    return all().mapToInt(c -> c.grams().mixedG() + c.grams().agentG()).sum();
  }

  public int printedG() {
    return all().mapToInt(c -> c.grams().printedG()).sum();
  }

  public int screensG() {
    return all().mapToInt(c -> c.grams().screensG()).sum();
  }

  public int returnedG() {
    return all().mapToInt(c -> c.grams().returnedG()).sum();
  }

  public int discardedG() {
    return all().mapToInt(c -> c.grams().discardedG()).sum();
  }

  public int lostG() {
    return all().mapToInt(c -> c.grams().lostG()).sum();
  }

  public int leftG() {
    return open.stream().mapToInt(c -> c.grams().leftG()).sum();
  }

  private Stream<InkContainer> all() {
    return Stream.concat(open.stream(), closed.stream());
  }
}
