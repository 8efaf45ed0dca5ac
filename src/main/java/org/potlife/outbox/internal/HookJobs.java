package org.potlife.outbox.internal;

import com.github.kagkarlsson.scheduler.Clock;
import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.SystemClock;
import com.github.kagkarlsson.scheduler.exceptions.DbSchedulerException;
import com.github.kagkarlsson.scheduler.task.CompletionHandler;
import com.github.kagkarlsson.scheduler.task.CompletionHandler.OnCompleteRemove;
import com.github.kagkarlsson.scheduler.task.ExecutionContext;
import com.github.kagkarlsson.scheduler.task.TaskInstance;
import com.github.kagkarlsson.scheduler.task.helper.CustomTask;
import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.FixedDelay;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.potlife.outbox.internal.Webhook.Key;

/**
 * The job library over the table outbox_task: one job per hook, so that one worker among all
 * instances serves it, and one that clears away what is older than what is kept. A job whose
 * process died is found by its missing heartbeat and begun anew.
 */
@ApplicationScoped
class HookJobs {

  private static final Logger LOG = Logger.getLogger(HookJobs.class);
  private static final String TABLE = "outbox_task";
  private static final String DELIVER = "webhook-delivery";
  private static final String TIDY = "outbox-tidy";

  private static final int WORKERS = 4;
  private static final Duration POLL = Duration.ofMillis(500);
  private static final Duration HEARTBEAT = Duration.ofSeconds(4);
  private static final int MISSED_HEARTBEATS = 4;
  private static final Duration LONGEST_STOP = Duration.ofSeconds(12);
  private static final Duration AFTER_FAULT = Duration.ofSeconds(5);
  private static final Duration TIDY_EVERY = Duration.ofMinutes(1);

  private final HookDelivery delivery;
  private final Hooks hooks;
  private final DataSource dataSource;
  private final Duration kept;
  private final Duration keptForHooks;

  // the library's clock, not the service's: heartbeats are compared between machines
  private final Clock clock = new SystemClock();

  private volatile boolean closing;
  private CustomTask<Void> task;
  private Scheduler scheduler;
  private ExecutorService threads;

  @Inject
  HookJobs(
      HookDelivery delivery,
      Hooks hooks,
      DataSource dataSource,
      @ConfigProperty(name = "potlife.events.kept", defaultValue = "14D") Duration kept,
      @ConfigProperty(name = "potlife.webhooks.kept", defaultValue = "60D") Duration keptForHooks) {
    this.delivery = delivery;
    this.hooks = hooks;
    this.dataSource = dataSource;
    this.kept = kept;
    this.keptForHooks = keptForHooks;
  }

  void start(@Observes StartupEvent event) {
    threads = Executors.newFixedThreadPool(WORKERS, HookJobs::named);
    task =
        Tasks.custom(DELIVER, Void.class)
            .onFailureReschedule(FixedDelay.of(AFTER_FAULT))
            .onDeadExecutionRevive()
            .execute((instance, context) -> deliver(instance, context));
    RecurringTask<Void> tidy =
        Tasks.recurring(TIDY, FixedDelay.of(TIDY_EVERY)).execute((instance, context) -> tidy());
    scheduler =
        Scheduler.create(dataSource, task)
            .startTasks(tidy)
            .tableName(TABLE)
            .clock(clock)
            .threads(WORKERS)
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

  /** Lets a hook be served. Joins the transaction of the caller. */
  void serve(Key key) {
    scheduler.scheduleIfNotExists(task.instance(key.instance()), clock.now());
  }

  /** There may be something new for the hooks of a plant. Those that wait after a failure wait. */
  void ring(String plant) {
    if (closing || scheduler == null) {
      return;
    }
    try {
      hooks.listBehind(plant).forEach(this::hurry);
    } catch (RuntimeException e) {
      LOG.debugf(e, "The hooks of plant %s could not be hurried; they look by themselves", plant);
    }
  }

  /** Lets a hook be served at once. */
  void hurry(Key key) {
    try {
      scheduler.reschedule(task.instance(key.instance()), clock.now());
      scheduler.triggerCheckForDueExecutions();
    } catch (DbSchedulerException e) {
      // it is being served right now and looks again before it rests
      LOG.tracef("Webhook %s is not hurried: %s", key.instance(), e.getMessage());
    }
  }

  private CompletionHandler<Void> deliver(TaskInstance<Void> instance, ExecutionContext context) {
    Key key = Key.ofInstance(instance.getId());
    Optional<Duration> next;
    try {
      next = delivery.run(key, () -> closing);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      next = Optional.of(Duration.ZERO);
    }
    if (next.isEmpty()) {
      return new OnCompleteRemove<>();
    }
    Duration rest = next.get();
    return (complete, operations) ->
        operations.reschedule(
            complete, clock.now().plus(delivery.hasNews(key) ? Duration.ZERO : rest));
  }

  private void tidy() {
    int removed = hooks.removeOlderThan(kept.toSeconds(), keptForHooks.toSeconds());
    if (removed > 0) {
      LOG.infof("%d events older than %s were removed from the outbox", removed, kept);
    }
    // a hook that was made anew while its old job ended would have none
    hooks.listKeys().forEach(this::serve);
  }

  private static Thread named(Runnable work) {
    Thread made = new Thread(work, "webhook");
    made.setDaemon(true);
    return made;
  }
}
