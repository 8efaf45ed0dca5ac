package org.potlife.outbox.internal;

import com.github.kagkarlsson.scheduler.Clock;
import com.github.kagkarlsson.scheduler.SystemClock;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.potlife.outbox.internal.Webhook.Key;

/** Delivers what a hook has not got yet, in order, and says when to go on. */
@ApplicationScoped
class HookDelivery {

  private static final Logger LOG = Logger.getLogger(HookDelivery.class);

  /** Also when nothing rang: looked for at least this often. */
  private static final Duration NET = Duration.ofSeconds(5);

  /** How long one hook may keep its worker while others wait. */
  private static final long SLICE_NS = Duration.ofSeconds(20).toNanos();

  private static final int PAGE = 50;

  private final Hooks hooks;
  private final OutboxReader outbox;
  private final Postman postman;
  private final Backoff backoff;
  private final int mostTries;

  // the machine's time: the other side compares it with its own clock
  private final Clock clock = new SystemClock();

  @Inject
  HookDelivery(
      Hooks hooks,
      OutboxReader outbox,
      Postman postman,
      @ConfigProperty(name = "potlife.webhooks.tries", defaultValue = "12") int mostTries,
      @ConfigProperty(name = "potlife.webhooks.longest-wait", defaultValue = "10M")
          Duration longestWait) {
    this.hooks = hooks;
    this.outbox = outbox;
    this.postman = postman;
    this.mostTries = mostTries;
    this.backoff = new Backoff(longestWait, new SecureRandom());
  }

  /**
   * Delivers until nothing is left, something fails, or others are to have their turn.
   *
   * @return when to go on; empty when there is no such hook any more
   */
  Optional<Duration> run(Key key, BooleanSupplier closing) throws InterruptedException {
    long begun = System.nanoTime();
    BooleanSupplier over = () -> closing.getAsBoolean() || System.nanoTime() - begun > SLICE_NS;
    while (!over.getAsBoolean()) {
      Optional<Webhook> hook = hooks.find(key);
      if (hook.isEmpty()) {
        return Optional.empty();
      }
      redeliver(hook.get());
      List<OutboxEvent> page = outbox.after(key.plant(), hook.get().position, PAGE);
      if (page.isEmpty()) {
        return Optional.of(NET);
      }
      Optional<Duration> wait = deliver(hook.get(), page, over);
      if (wait.isPresent()) {
        return wait;
      }
    }
    return Optional.of(Duration.ZERO);
  }

  /** Whether there is something to do at once; asked when the worker is about to rest. */
  boolean hasNews(Key key) {
    return hooks
        .find(key)
        .filter(
            hook ->
                hook.tries == 0
                    && (hooks.findDue(key).isPresent()
                        || !outbox.after(key.plant(), hook.position, 1).isEmpty()))
        .isPresent();
  }

  private Optional<Duration> deliver(Webhook hook, List<OutboxEvent> page, BooleanSupplier over)
      throws InterruptedException {
    EventTypes wanted = EventTypes.parse(hook.types);
    long position = hook.position;
    for (OutboxEvent event : page) {
      if (!wanted.wants(event.type())) {
        continue;
      }
      if (over.getAsBoolean()) {
        return Optional.of(Duration.ZERO);
      }
      int tries = position == hook.position ? hook.tries + 1 : 1;
      Instant now = clock.now();
      Optional<String> failure = postman.post(hook, event.seq(), event.event(), tries, now);
      if (failure.isPresent()) {
        return failed(hook.key, position, event, tries, failure.get());
      }
      if (!hooks.advance(hook.key, position, event.seq(), now)) {
        return Optional.of(NET);
      }
      position = event.seq();
    }
    long last = page.get(page.size() - 1).seq();
    boolean stands = position == last || hooks.advance(hook.key, position, last, null);
    return stands ? Optional.empty() : Optional.of(NET);
  }

  private Optional<Duration> failed(
      Key key, long position, OutboxEvent event, int tries, String failure) {
    if (tries < mostTries) {
      Duration wait = backoff.after(tries);
      LOG.infof(
          "Webhook %s did not take event %d (try %d of %d): %s; again in %d ms",
          key.instance(), event.seq(), tries, mostTries, failure, wait.toMillis());
      return Optional.of(hooks.failed(key, position, tries, failure) ? wait : NET);
    }
    LOG.warnf(
        "Webhook %s did not take event %d in %d tries: %s; it is set aside as a dead letter",
        key.instance(), event.seq(), tries, failure);
    hooks.setAside(key, position, event, tries, failure, clock.now());
    return Optional.of(Duration.ZERO);
  }

  private void redeliver(Webhook hook) throws InterruptedException {
    Optional<DeadLetter> due = hooks.findDue(hook.key);
    if (due.isEmpty()) {
      return;
    }
    DeadLetter letter = due.get();
    Instant now = clock.now();
    Optional<String> failure =
        postman.post(hook, letter.key.seq(), letter.event, letter.tries + 1, now);
    if (failure.isEmpty()) {
      hooks.redelivered(letter.key);
    } else {
      hooks.failedAgain(letter.key, failure.get(), now);
    }
  }
}
