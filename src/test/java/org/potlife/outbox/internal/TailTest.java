package org.potlife.outbox.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class TailTest {

  private final Tail tail = new Tail(10);

  private static List<OutboxEvent> events(long from, long to) {
    return LongStream.rangeClosed(from, to)
        .mapToObj(seq -> new OutboxEvent(seq, "order.placed", "{}"))
        .toList();
  }

  private List<Long> after(long seq, int limit) {
    return tail.after(seq, limit).orElseThrow().stream().map(OutboxEvent::seq).toList();
  }

  @Test
  void whatFollowsANumberIsFoundByIt() {
    tail.append(events(11, 15));

    assertThat(after(10, 50)).containsExactly(11L, 12L, 13L, 14L, 15L);
    assertThat(after(12, 2)).containsExactly(13L, 14L);
    assertThat(after(15, 50)).isEmpty();
  }

  @Test
  void whatLiesFurtherBackIsReadElsewhere() {
    tail.append(events(11, 15));

    assertThat(tail.after(9, 50)).isEmpty();
  }

  @Test
  void onlyTheNewestAreKept() {
    tail.append(events(11, 400));
    tail.append(events(401, 900));

    assertThat(tail.after(399, 1)).isEmpty();
    assertThat(after(400, 1)).containsExactly(401L);
    assertThat(tail.last()).isEqualTo(900);
  }

  @Test
  void whoWaitsIsCalledOnceAndWhoComesTooLateAtOnce() {
    AtomicInteger calls = new AtomicInteger();
    tail.await(10, calls::incrementAndGet);
    assertThat(calls).hasValue(0);

    tail.append(events(11, 11));
    tail.append(events(12, 12));
    assertThat(calls).hasValue(1);

    tail.await(11, calls::incrementAndGet);
    assertThat(calls).hasValue(2);
  }

  @Test
  void whoHasGoneIsNotCalled() {
    AtomicInteger calls = new AtomicInteger();
    Runnable wake = calls::incrementAndGet;
    tail.await(10, wake);
    tail.forget(wake);

    tail.append(events(11, 11));

    assertThat(calls).hasValue(0);
  }
}
