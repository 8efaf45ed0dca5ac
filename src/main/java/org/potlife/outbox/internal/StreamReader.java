package org.potlife.outbox.internal;

import io.smallrye.mutiny.Multi;
import io.smallrye.mutiny.Uni;
import io.smallrye.mutiny.infrastructure.Infrastructure;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import org.jboss.logging.Logger;
import org.potlife.outbox.internal.OutboxReader.Kept;

/**
 * One open stream. It reads the next page only when the one before has left the machine, so that no
 * reader, however slow, costs more than a page of memory; one that takes nothing for a while is cut
 * off.
 */
final class StreamReader {

  private static final Logger LOG = Logger.getLogger(StreamReader.class);
  private static final int PAGE = 50;
  private static final Duration HEARTBEAT = Duration.ofSeconds(15);
  private static final long LONGEST_WRITE_NS = Duration.ofSeconds(30).toNanos();

  /** Who may read is asked when a stream begins: a token that was revoked ends with its stream. */
  private static final long LONGEST_STREAM_NS = Duration.ofMinutes(10).toNanos();

  private final String plant;
  private final StreamHub hub;
  private final OutboxReader outbox;
  private final Runnable cutOff;
  private final LongSupplier nanos;
  private final Tail tail;

  private final long openedNs;
  private final Gap gap;
  private volatile long position;
  private boolean first = true;

  /** When the last page was handed on; 0 while the reader waits for events. */
  private volatile long writingSinceNs;

  /**
   * Numbers that the reader asked for and cannot get.
   *
   * @param missedFrom first of them
   * @param missedTo last of them
   * @param reason expired: older than what is kept; unknown: there never were such numbers here
   */
  record Gap(long missedFrom, long missedTo, String reason) {}

  /**
   * What is written at a time.
   *
   * @param upTo number up to which all has been looked at
   * @param gap comes first; or null
   * @param ended whether the stream ends
   */
  record Page(List<OutboxEvent> events, long upTo, Gap gap, boolean ended) {}

  /**
   * @param after number of the last event that the reader has; nothing: from now on
   * @param cutOff ends the connection at once
   * @param nanos counts nanoseconds
   */
  StreamReader(
      String plant,
      StreamHub hub,
      OutboxReader outbox,
      Optional<Long> after,
      Runnable cutOff,
      LongSupplier nanos) {
    this.plant = plant;
    this.hub = hub;
    this.outbox = outbox;
    this.cutOff = cutOff;
    this.nanos = nanos;
    openedNs = nanos.getAsLong();
    tail = hub.tail(plant);
    Kept kept = outbox.kept(plant);
    long asked = after.orElse(kept.last());
    if (asked > kept.last()) {
      gap = new Gap(kept.last() + 1, asked, "unknown");
      position = kept.last();
    } else if (asked + 1 < kept.first()) {
      gap = new Gap(asked + 1, kept.first() - 1, "expired");
      position = kept.first() - 1;
    } else {
      gap = null;
      position = asked;
    }
  }

  /** The pages, one after the other, each when it is asked for; the first at once. */
  Multi<Page> pages() {
    return Multi.createBy()
        .repeating()
        .uni(this::next)
        .whilst(page -> !page.ended())
        .onTermination()
        .invoke(() -> hub.leave(this));
  }

  private Uni<Page> next() {
    writingSinceNs = 0;
    if (hub.closing() || nanos.getAsLong() - openedNs > LONGEST_STREAM_NS) {
      return Uni.createFrom().item(new Page(List.of(), position, null, true));
    }
    if (first) {
      first = false;
      return Uni.createFrom().item(() -> handedOn(new Page(List.of(), position, gap, false)));
    }
    Optional<List<OutboxEvent>> known = tail.after(position, PAGE);
    if (known.isEmpty()) {
      return Uni.createFrom()
          .item(() -> page(outbox.after(plant, position, PAGE)))
          .runSubscriptionOn(Infrastructure.getDefaultWorkerPool());
    }
    return known.get().isEmpty() ? awaitNews() : Uni.createFrom().item(() -> page(known.get()));
  }

  private Uni<Page> awaitNews() {
    return Uni.createFrom()
        .<Boolean>emitter(
            emitter -> {
              Runnable wake = () -> emitter.complete(true);
              emitter.onTermination(() -> tail.forget(wake));
              tail.await(position, wake);
            })
        .ifNoItem()
        .after(HEARTBEAT)
        .recoverWithItem(false)
        .map(woken -> page(woken ? tail.after(position, PAGE).orElseGet(List::of) : List.of()));
  }

  private Page page(List<OutboxEvent> events) {
    if (!events.isEmpty()) {
      position = events.get(events.size() - 1).seq();
    }
    return handedOn(new Page(events, position, null, false));
  }

  private Page handedOn(Page page) {
    writingSinceNs = nanos.getAsLong();
    return page;
  }

  /** Ends the connection of a reader that has not taken a page for too long. */
  void cutOffWhenStuck() {
    long since = writingSinceNs;
    if (since != 0 && nanos.getAsLong() - since > LONGEST_WRITE_NS) {
      LOG.infof("A reader of plant %s took nothing for 30 s and is cut off", plant);
      hub.leave(this);
      cutOff.run();
    }
  }
}
