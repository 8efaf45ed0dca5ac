package org.potlife.plan.internal;

import java.time.Duration;
import java.util.function.BooleanSupplier;
import org.jboss.logging.Logger;
import org.potlife.plan.internal.SolveStore.Wanted;
import org.potlife.planning.SolveWatch;

/**
 * Carries the progress of a search to the database and the wish to stop or to begin anew back, both
 * at most twice a second. Used by the solving thread only.
 */
final class JobWatch implements SolveWatch {

  private static final Logger LOG = Logger.getLogger(JobWatch.class);
  private static final long EVERY_NS = Duration.ofMillis(500).toNanos();

  private final String plan;
  private final SolveStore store;
  private final BooleanSupplier closing;
  private final Curve curve = new Curve();
  private long lookedAtNs = System.nanoTime() - EVERY_NS;
  private boolean fresh;
  private boolean stop;
  private boolean restart;

  /**
   * @param closing whether the service is about to end
   */
  JobWatch(String plan, SolveStore store, BooleanSupplier closing) {
    this.plan = plan;
    this.store = store;
    this.closing = closing;
  }

  @Override
  public void improved(Progress progress) {
    curve.add(progress);
    fresh = true;
    look();
  }

  @Override
  public boolean stopRequested() {
    look();
    return stop || restart || closing.getAsBoolean();
  }

  /** Whether somebody asked for the best plan so far. */
  boolean stopped() {
    return stop;
  }

  /** Writes down what is not written yet. */
  void flush() {
    if (fresh) {
      write();
    }
  }

  private void look() {
    long now = System.nanoTime();
    if (now - lookedAtNs >= EVERY_NS) {
      lookedAtNs = now;
      write();
    }
  }

  private void write() {
    try {
      Wanted wanted = store.noteProgress(plan, curve.points());
      stop |= wanted.stop();
      restart |= wanted.restart();
      fresh = false;
    } catch (RuntimeException e) {
      // the search is worth more than its curve
      LOG.warnf("The progress of plan %s could not be written: %s", plan, e.getMessage());
    }
  }
}
