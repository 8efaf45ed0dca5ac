package org.potlife.plan.internal;

import com.github.kagkarlsson.scheduler.Clock;
import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.SystemClock;
import com.github.kagkarlsson.scheduler.task.CompletionHandler;
import com.github.kagkarlsson.scheduler.task.CompletionHandler.OnCompleteRemove;
import com.github.kagkarlsson.scheduler.task.CompletionHandler.OnCompleteReschedule;
import com.github.kagkarlsson.scheduler.task.ExecutionComplete;
import com.github.kagkarlsson.scheduler.task.ExecutionOperations;
import com.github.kagkarlsson.scheduler.task.FailureHandler;
import com.github.kagkarlsson.scheduler.task.helper.CustomTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.FixedDelay;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.time.Duration;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import javax.sql.DataSource;
import org.jboss.logging.Logger;

/**
 * The job library over the service's own database. A job that is picked sends a heartbeat; one
 * whose process died is found by the missing heartbeat, by any replica or after the next start, and
 * begun anew in less than a minute.
 */
@ApplicationScoped
class SolveJobs {

  private static final Logger LOG = Logger.getLogger(SolveJobs.class);
  private static final String SOLVE = "plan-solve";
  private static final String FOLLOW = "plan-follow";

  private static final Duration POLL = Duration.ofMillis(500);
  private static final Duration HEARTBEAT = Duration.ofSeconds(4);
  private static final int MISSED_HEARTBEATS = 4;
  private static final Duration LONGEST_STOP = Duration.ofSeconds(15);
  private static final Duration UNTIL_RETRY = Duration.ofSeconds(5);
  private static final Duration UNTIL_FREE = Duration.ofSeconds(1);
  private static final Duration FIRST_LOOK = Duration.ofMillis(500);
  private static final int MOST_FAILURES = 3;

  private final SolveJob job;
  private final SolveStore store;
  private final Replanning replanning;
  private final DataSource dataSource;

  // the library's clock, not the service's: heartbeats are compared between machines
  private final Clock clock = new SystemClock();

  private volatile boolean closing;
  private CustomTask<Void> solving;
  private CustomTask<Void> following;
  private Semaphore free;
  private Scheduler scheduler;
  private ExecutorService threads;

  @Inject
  SolveJobs(SolveJob job, SolveStore store, Replanning replanning, DataSource dataSource) {
    this.job = job;
    this.store = store;
    this.replanning = replanning;
    this.dataSource = dataSource;
  }

  void start(@Observes StartupEvent event) {
    // one core is left for the API
    int solves = Math.max(1, Runtime.getRuntime().availableProcessors() - 1);
    free = new Semaphore(solves);
    // one more looks after what happens while plans are solved
    threads = Executors.newFixedThreadPool(solves + 1, SolveJobs::backgroundThread);
    solving =
        Tasks.custom(SOLVE, Void.class)
            .onFailure(this::retryOrGiveUp)
            .onDeadExecutionRevive()
            .execute((instance, context) -> solve(instance.getId()));
    following =
        Tasks.custom(FOLLOW, Void.class)
            .onFailure(new FailureHandler.OnFailureRetryLater<>(UNTIL_RETRY))
            .onDeadExecutionRevive()
            .execute((instance, context) -> follow(instance.getId()));
    scheduler =
        Scheduler.create(dataSource, solving, following)
            .clock(clock)
            .threads(solves + 1)
            .executorService(threads)
            .pollingInterval(POLL)
            .heartbeatInterval(HEARTBEAT)
            .missedHeartbeatsLimit(MISSED_HEARTBEATS)
            .shutdownMaxWait(LONGEST_STOP)
            .build();
    scheduler.start();
  }

  void stop(@Observes ShutdownEvent event) {
    closing = true;
    scheduler.stop();
    threads.shutdownNow();
  }

  /** Lets the plan be solved. Joins the transaction of the caller. */
  void schedule(String plan) {
    scheduler.schedule(solving.instance(plan), clock.now());
  }

  /** Lets a plant's pending changes be looked after. Joins the transaction of the caller. */
  void scheduleFollowing(String task) {
    scheduler.schedule(following.instance(task), clock.now().plus(FIRST_LOOK));
  }

  private CompletionHandler<Void> solve(String plan) {
    if (!free.tryAcquire()) {
      return new OnCompleteReschedule<>(FixedDelay.of(UNTIL_FREE));
    }
    try {
      return job.run(plan, () -> closing);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    } finally {
      free.release();
    }
  }

  private CompletionHandler<Void> follow(String task) {
    return replanning
        .lookAfter(task)
        .<CompletionHandler<Void>>map(rest -> new OnCompleteReschedule<>(FixedDelay.of(rest)))
        .orElseGet(OnCompleteRemove::new);
  }

  private static Thread backgroundThread(Runnable work) {
    Thread thread = new Thread(work, "plan-solve");
    thread.setPriority(Thread.MIN_PRIORITY);
    thread.setDaemon(true);
    return thread;
  }

  private void retryOrGiveUp(ExecutionComplete complete, ExecutionOperations<Void> operations) {
    String plan = complete.getExecution().getId();
    Throwable cause = complete.getCause().orElse(null);
    if (complete.getExecution().consecutiveFailures + 1 < MOST_FAILURES) {
      LOG.warnf(cause, "Plan %s: tried again soon", plan);
      operations.reschedule(complete, complete.getTimeDone().plus(UNTIL_RETRY));
      return;
    }
    LOG.errorf(cause, "Plan %s: given up", plan);
    store.fail(plan, "The plan could not be stored: " + cause);
    store.hold(plan, "It could not be published: " + cause);
    operations.remove();
  }
}
