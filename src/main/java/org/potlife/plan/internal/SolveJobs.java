package org.potlife.plan.internal;

import com.github.kagkarlsson.scheduler.Clock;
import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.SystemClock;
import com.github.kagkarlsson.scheduler.task.ExecutionComplete;
import com.github.kagkarlsson.scheduler.task.ExecutionOperations;
import com.github.kagkarlsson.scheduler.task.helper.CustomTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.time.Duration;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
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

  private static final Duration POLL = Duration.ofMillis(500);
  private static final Duration HEARTBEAT = Duration.ofSeconds(4);
  private static final int MISSED_HEARTBEATS = 4;
  private static final Duration LONGEST_STOP = Duration.ofSeconds(15);
  private static final Duration UNTIL_RETRY = Duration.ofSeconds(5);
  private static final int MOST_FAILURES = 3;

  private final SolveJob job;
  private final SolveStore store;
  private final DataSource dataSource;

  // the library's clock, not the service's: heartbeats are compared between machines
  private final Clock clock = new SystemClock();

  private volatile boolean closing;
  private CustomTask<Void> task;
  private Scheduler scheduler;
  private ExecutorService threads;

  @Inject
  SolveJobs(SolveJob job, SolveStore store, DataSource dataSource) {
    this.job = job;
    this.store = store;
    this.dataSource = dataSource;
  }

  void start(@Observes StartupEvent event) {
    // one core is left for the API
    int solves = Math.max(1, Runtime.getRuntime().availableProcessors() - 1);
    threads = Executors.newFixedThreadPool(solves, SolveJobs::backgroundThread);
    task =
        Tasks.custom(SOLVE, Void.class)
            .onFailure(this::retryOrGiveUp)
            .onDeadExecutionRevive()
            .execute(
                (instance, context) -> {
                  try {
                    return job.run(instance.getId(), () -> closing);
                  } catch (SQLException e) {
                    throw new IllegalStateException(e);
                  }
                });
    scheduler =
        Scheduler.create(dataSource, task)
            .clock(clock)
            .threads(solves)
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
    scheduler.schedule(task.instance(plan), clock.now());
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
    operations.remove();
  }
}
