package org.potlife.outbox.internal;

import static org.assertj.core.api.Assertions.assertThat;

import io.smallrye.mutiny.helpers.test.AssertSubscriber;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.potlife.outbox.internal.StreamReader.Page;

class StreamReaderTest {

  private static final long EVENTS = 1000;

  private final AtomicInteger pagesRead = new AtomicInteger();
  private final AtomicInteger cutOff = new AtomicInteger();
  private final AtomicLong nanos = new AtomicLong(1);

  /** A table with a thousand events. */
  private final OutboxReader table =
      new OutboxReader(null) {
        @Override
        Kept kept(String plant) {
          return new Kept(1, EVENTS);
        }

        @Override
        List<OutboxEvent> after(String plant, long seq, int limit) {
          pagesRead.incrementAndGet();
          return LongStream.rangeClosed(seq + 1, Math.min(EVENTS, seq + limit))
              .mapToObj(number -> new OutboxEvent(number, "order.placed", "{}"))
              .toList();
        }
      };

  private final StreamHub hub = new StreamHub(table, 2);

  private StreamReader reader(long after) {
    StreamReader reader =
        new StreamReader(
            "yard", hub, table, Optional.of(after), cutOff::incrementAndGet, nanos::get);
    hub.enter(reader);
    return reader;
  }

  private static AssertSubscriber<Page> taking(StreamReader reader, long pages) {
    AssertSubscriber<Page> taker = AssertSubscriber.create(pages);
    reader.pages().subscribe().withSubscriber(taker);
    return taker;
  }

  private void pass(Duration time) {
    nanos.addAndGet(time.toNanos());
  }

  @Test
  void aReaderThatTakesNothingCostsOnePageHoweverMuchThereIs() {
    AssertSubscriber<Page> taker = taking(reader(0), 2);

    taker.awaitItems(2, Duration.ofSeconds(30));

    assertThat(taker.getItems().get(0).events())
        .as("the first page says where it stands")
        .isEmpty();
    assertThat(taker.getItems().get(1).events()).hasSize(50);
    assertThat(pagesRead).hasValue(1);
  }

  @Test
  void itIsCutOffAfterHalfAMinuteAndItsPlaceIsFree() {
    StreamReader stuck = reader(0);
    taking(stuck, 2).awaitItems(2, Duration.ofSeconds(30));

    pass(Duration.ofSeconds(29));
    stuck.cutOffWhenStuck();
    assertThat(cutOff).hasValue(0);

    pass(Duration.ofSeconds(2));
    stuck.cutOffWhenStuck();
    assertThat(cutOff).hasValue(1);
    assertThat(hub.openStreams()).isZero();
  }

  @Test
  void whoHasTakenEverythingMayWaitAsLongAsItLikes() {
    StreamReader idle = reader(EVENTS);
    AssertSubscriber<Page> taker = taking(idle, Long.MAX_VALUE);
    taker.awaitItems(1, Duration.ofSeconds(30));

    pass(Duration.ofHours(1));
    idle.cutOffWhenStuck();

    assertThat(cutOff).hasValue(0);
    taker.cancel();
    assertThat(hub.openStreams()).isZero();
  }

  @Test
  void afterTenMinutesTheReaderHasToComeAgainAndSayWhoItIs() {
    AssertSubscriber<Page> taker = taking(reader(EVENTS - 120), 2);
    taker.awaitItems(2, Duration.ofSeconds(30));

    pass(Duration.ofMinutes(11));
    taker.request(10);

    taker.awaitCompletion(Duration.ofSeconds(30));
    assertThat(taker.getLastItem().ended()).isTrue();
    assertThat(taker.getLastItem().upTo()).as("from where it goes on").isEqualTo(EVENTS - 70);
    assertThat(hub.openStreams()).isZero();
  }

  @Test
  void whenTheServiceEndsEveryStreamEnds() {
    AssertSubscriber<Page> idle = taking(reader(EVENTS), Long.MAX_VALUE);
    idle.awaitItems(1, Duration.ofSeconds(30));

    hub.stop(null);

    idle.awaitCompletion(Duration.ofSeconds(30));
  }
}
