package org.potlife.outbox.internal;

import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.potlife.platform.problem.ProblemException;
import org.potlife.platform.problem.ProblemType;

/**
 * The open streams of this instance. One thread reads what is new for a plant, once for all its
 * readers; nothing is read for a plant that nobody listens to.
 */
@ApplicationScoped
class StreamHub {

  private static final Logger LOG = Logger.getLogger(StreamHub.class);
  private static final int PAGE = 500;
  private static final Duration LOOK_FOR_STUCK = Duration.ofSeconds(2);

  private final OutboxReader outbox;
  private final int mostStreams;
  private final Map<String, Tail> tails = new ConcurrentHashMap<>();
  private final Set<StreamReader> open = ConcurrentHashMap.newKeySet();
  private final ScheduledExecutorService thread =
      Executors.newSingleThreadScheduledExecutor(StreamHub::named);

  private volatile boolean closing;

  @Inject
  StreamHub(
      OutboxReader outbox,
      @ConfigProperty(name = "potlife.events.streams", defaultValue = "200") int mostStreams) {
    this.outbox = outbox;
    this.mostStreams = mostStreams;
  }

  void start(@Observes StartupEvent event) {
    thread.scheduleWithFixedDelay(
        () -> open.forEach(StreamReader::cutOffWhenStuck),
        LOOK_FOR_STUCK.toMillis(),
        LOOK_FOR_STUCK.toMillis(),
        TimeUnit.MILLISECONDS);
  }

  void stop(@Observes ShutdownEvent event) {
    closing = true;
    tails.values().forEach(Tail::wakeAll);
    thread.shutdown();
  }

  boolean closing() {
    return closing;
  }

  /**
   * Lets a reader in.
   *
   * @throws ProblemException 503 when there are too many
   */
  void enter(StreamReader reader) {
    if (open.size() >= mostStreams || closing) {
      throw new ProblemException(
          ProblemType.UNAVAILABLE,
          closing
              ? "The service is about to end. Come back in a moment."
              : "This instance serves "
                  + mostStreams
                  + " streams already (potlife.events.streams). Come back later.");
    }
    open.add(reader);
  }

  void leave(StreamReader reader) {
    open.remove(reader);
  }

  /** How many streams are open. */
  int openStreams() {
    return open.size();
  }

  /** The newest events of a plant, from now on kept up to date. */
  Tail tail(String plant) {
    return tails.computeIfAbsent(plant, name -> new Tail(outbox.kept(name).last()));
  }

  /** There may be something new for a plant. */
  void ring(String plant) {
    Tail tail = tails.get(plant);
    if (tail != null && !closing) {
      thread.execute(() -> refresh(plant, tail));
    }
  }

  void ringForAll() {
    tails.keySet().forEach(this::ring);
  }

  private void refresh(String plant, Tail tail) {
    try {
      var fresh = outbox.after(plant, tail.last(), PAGE);
      while (!fresh.isEmpty()) {
        tail.append(fresh);
        fresh = outbox.after(plant, tail.last(), PAGE);
      }
    } catch (RuntimeException e) {
      // the bell rings again
      LOG.warnf("The events of plant %s could not be read: %s", plant, e.getMessage());
    }
  }

  private static Thread named(Runnable work) {
    Thread made = new Thread(work, "outbox-streams");
    made.setDaemon(true);
    return made;
  }
}
