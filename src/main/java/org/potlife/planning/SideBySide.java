package org.potlife.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;

/**
 * Searches from several seeds at once, each on a thread of its own. Each begins its rounds at the
 * best plan that any of them has found. With one alone the result is repeatable.
 */
final class SideBySide {

  private final Problem problem;
  private final boolean verify;
  private final int searches;

  SideBySide(Problem problem, boolean verify, int searches) {
    this.problem = problem;
    this.verify = verify;
    this.searches = searches;
  }

  /**
   * The best plan found; never worse than the first.
   *
   * @param budgets a budget for each search, asked for on its thread
   * @param improved told of each better outcome, one at a time, on any of the threads
   */
  Dispatch.Plan improve(
      Dispatch.Plan first, long seed, Supplier<Budget> budgets, Consumer<Outcome> improved) {
    Incumbent incumbent = new Incumbent(first, improved);
    List<CompletableFuture<Void>> others = new ArrayList<>();
    for (int i = 1; i < searches; i++) {
      long own = seed + (long) i * Integer.MAX_VALUE;
      others.add(
          CompletableFuture.runAsync(
              () -> search(own, budgets.get(), incumbent), SideBySide::onThread));
    }
    search(seed, budgets.get(), incumbent);
    try {
      others.forEach(CompletableFuture::join);
    } catch (CompletionException e) {
      throw e.getCause() instanceof RuntimeException cause ? cause : e;
    }
    return incumbent.best();
  }

  private void search(long seed, Budget budget, Incumbent incumbent) {
    new Annealing(problem, verify, seed, budget, incumbent).improve();
  }

  private static void onThread(Runnable work) {
    Thread thread = new Thread(work, "plan-search");
    thread.setPriority(Thread.MIN_PRIORITY);
    thread.setDaemon(true);
    thread.start();
  }
}
