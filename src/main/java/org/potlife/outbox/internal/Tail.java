package org.potlife.outbox.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The newest events of one plant, kept in memory for everyone who reads its stream, and those who
 * wait for the next. Numbers have no gap, so that an event is found by its number.
 */
final class Tail {

  /** A reader that is further behind reads from the database. */
  private static final int MOST_KEPT = 500;

  private record Kept(List<OutboxEvent> events, long last) {}

  private final Set<Runnable> waiting = ConcurrentHashMap.newKeySet();
  private volatile Kept kept;

  /**
   * @param last number of the newest event so far
   */
  Tail(long last) {
    kept = new Kept(List.of(), last);
  }

  /** Number of the newest event that is known here. */
  long last() {
    return kept.last();
  }

  /** Adds what follows on the newest and lets those who wait look. Called by one thread. */
  void append(List<OutboxEvent> fresh) {
    if (fresh.isEmpty()) {
      return;
    }
    List<OutboxEvent> all = new ArrayList<>(kept.events());
    all.addAll(fresh);
    kept =
        new Kept(
            List.copyOf(all.subList(Math.max(0, all.size() - MOST_KEPT), all.size())),
            fresh.get(fresh.size() - 1).seq());
    wakeAll();
  }

  /**
   * What follows a number, at most {@code limit} events; nothing when it must be read from the
   * database.
   */
  Optional<List<OutboxEvent>> after(long seq, int limit) {
    Kept now = kept;
    if (seq >= now.last()) {
      return Optional.of(List.of());
    }
    long missing = now.last() - seq;
    int size = now.events().size();
    if (missing > size) {
      return Optional.empty();
    }
    int from = size - (int) missing;
    return Optional.of(now.events().subList(from, Math.min(size, from + limit)));
  }

  /** Calls back once there is something after this number, at once if there is already. */
  void await(long seq, Runnable wake) {
    waiting.add(wake);
    if (kept.last() > seq) {
      wakeOne(wake);
    }
  }

  void forget(Runnable wake) {
    waiting.remove(wake);
  }

  /** Calls back everyone who waits. */
  void wakeAll() {
    waiting.forEach(this::wakeOne);
  }

  private void wakeOne(Runnable wake) {
    if (waiting.remove(wake)) {
      wake.run();
    }
  }
}
