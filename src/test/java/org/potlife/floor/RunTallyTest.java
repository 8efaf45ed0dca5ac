package org.potlife.floor;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.potlife.floor.RunTally.Kind;
import org.potlife.floor.RunTally.Mark;

/** What is told of a run adds up to the same in whatever order it comes in. */
class RunTallyTest {

  private static Instant at(String time) {
    return Instant.parse("2026-12-01T" + time + ":00Z");
  }

  private static Mark mark(Kind kind, String time) {
    return new Mark(kind, at(time), 0, 0);
  }

  private static Mark count(String time, int good, int spoiled) {
    return new Mark(Kind.COUNTED, at(time), good, spoiled);
  }

  private static RunTally tally(Mark... marks) {
    return RunTally.of(Arrays.asList(marks)).orElseThrow();
  }

  @Test
  void nothingToldIsNothing() {
    assertThat(RunTally.of(List.of())).isEmpty();
  }

  @Test
  void aLateCountThatIsLowerDoesNotLowerIt() {
    RunTally tally = tally(count("09:00", 100, 2), count("08:30", 50, 1));
    assertThat(tally.good()).isEqualTo(100);
    assertThat(tally.counted()).isEqualTo(at("09:00"));
  }

  @Test
  void aLaterCountThatIsLowerDoesNotLowerItEither() {
    assertThat(tally(count("09:00", 100, 2), count("09:30", 90, 2)).good()).isEqualTo(100);
  }

  @Test
  void theSameCountAgainTellsThatThePressStands() {
    assertThat(tally(count("09:00", 100, 0), count("09:30", 100, 0)).counted())
        .isEqualTo(at("09:30"));
  }

  @Test
  void theEarliestStartCounts() {
    assertThat(tally(mark(Kind.STARTED, "08:10"), mark(Kind.STARTED, "08:00")).started())
        .isEqualTo(at("08:00"));
  }

  @Test
  void theEndSetsThePiecesWhateverWasCounted() {
    RunTally tally = tally(count("09:00", 100, 2), new Mark(Kind.ENDED, at("09:30"), 98, 7));
    assertThat(tally.good()).isEqualTo(98);
    assertThat(tally.ended()).isEqualTo(at("09:30"));
  }

  @Test
  void whatIsFoundSpoiledAfterTheCountIsNoLongerGood() {
    Mark found = new Mark(Kind.SPOILED, at("10:00"), 0, 5);
    Mark before = new Mark(Kind.SPOILED, at("08:00"), 0, 3);
    RunTally tally = tally(found, count("09:00", 100, 2), before);
    assertThat(tally.good()).isEqualTo(95);
    assertThat(tally.spoiled()).isEqualTo(7);
  }

  @Test
  void theOrderOfArrivalDoesNotMatter() {
    List<Mark> marks =
        new ArrayList<>(
            List.of(
                mark(Kind.STARTED, "08:00"),
                mark(Kind.APPROVED, "08:20"),
                count("08:40", 60, 3),
                count("09:00", 120, 4),
                count("09:10", 110, 4),
                new Mark(Kind.SPOILED, at("09:20"), 0, 2),
                new Mark(Kind.SPOILED, at("08:50"), 0, 9)));
    RunTally inOrder = RunTally.of(marks).orElseThrow();
    for (int i = 0; i < 50; i++) {
      Collections.shuffle(marks, new Random(i));
      assertThat(RunTally.of(marks)).contains(inOrder);
    }
  }
}
