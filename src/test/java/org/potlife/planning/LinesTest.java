package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Lines change in place, and every change can be taken back and made again. */
class LinesTest {

  @Test
  void aChangeThatWasTakenBackCanBeMadeAgain() {
    SplittableRandom random = new SplittableRandom(7);
    Lines lines = new Lines(3, 30);
    int[][] runs = new int[3][30];
    for (int run = 0; run < 30; run++) {
      runs[run % 3][run / 3] = run;
    }
    lines.set(runs, new int[] {10, 10, 10});
    Lines.Change noted = new Lines.Change(30);
    for (int i = 0; i < 2000; i++) {
      String before = text(lines);
      change(lines, random);
      String after = text(lines);
      int[] changedFrom = {lines.changedFrom(0), lines.changedFrom(1)};
      int[] changedTo = {lines.changedTo(0), lines.changedTo(1)};
      lines.note(noted);
      lines.undo();
      assertThat(text(lines)).isEqualTo(before);
      change(lines, random);
      lines.undo();
      lines.redo(noted);
      assertThat(text(lines)).isEqualTo(after);
      assertThat(new int[] {lines.changedFrom(0), lines.changedTo(0)})
          .containsExactly(changedFrom[0], changedTo[0]);
      if (lines.changedPress(1) >= 0) {
        assertThat(new int[] {lines.changedFrom(1), lines.changedTo(1)})
            .containsExactly(changedFrom[1], changedTo[1]);
      }
      for (int run = 0; run < 30; run++) {
        assertThat(lines.run(lines.pressOf(run), lines.placeOf(run))).isEqualTo(run);
      }
    }
  }

  @Test
  void behindAChangeALineGoesOnAsBefore() {
    SplittableRandom random = new SplittableRandom(8);
    Lines lines = new Lines(2, 20);
    int[][] runs = new int[2][20];
    for (int run = 0; run < 20; run++) {
      runs[run % 2][run / 2] = run;
    }
    lines.set(runs, new int[] {10, 10});
    for (int i = 0; i < 2000; i++) {
      int[][] old = lines.copyOfRuns();
      change(lines, random);
      for (int which = 0; which < 2; which++) {
        int press = lines.changedPress(which);
        if (press >= 0) {
          int to = lines.changedTo(which);
          int shift = lines.lengthBefore(which) - lines.length(press);
          assertThat(Arrays.copyOfRange(lines.runs()[press], to, lines.length(press)))
              .containsExactly(
                  Arrays.copyOfRange(old[press], to + shift, lines.lengthBefore(which)));
        }
      }
    }
  }

  @Test
  void aCopyBringsLinesBack() {
    Lines lines = new Lines(2, 4);
    lines.set(new int[][] {{0, 1, 2, 0}, {3, 0, 0, 0}}, new int[] {3, 1});
    Lines.Copy copy = lines.newCopy();
    lines.copyTo(copy);
    lines.move(0, 0, 2, 1, 1);
    assertThat(text(lines)).isEqualTo("[2][3, 0, 1]");
    lines.set(copy);
    assertThat(text(lines)).isEqualTo("[0, 1, 2][3]");
    assertThat(lines.pressOf(1)).isZero();
  }

  private static void change(Lines lines, SplittableRandom random) {
    int from = random.nextInt(lines.lengths().length);
    int to = random.nextInt(lines.lengths().length);
    int length = lines.length(from);
    if (length < 4 || lines.length(to) < 4) {
      from = lines.length(0) > 4 ? 0 : 1;
      to = from;
      length = lines.length(from);
    }
    int at = random.nextInt(length - 1);
    int count = 1 + random.nextInt(Math.min(3, length - at - 1) + 1);
    count = Math.min(count, length - at);
    switch (random.nextInt(3)) {
      case 0 -> {
        int most = from == to ? length - count : lines.length(to);
        lines.move(from, at, count, to, random.nextInt(most + 1));
      }
      case 1 -> {
        if (from != to) {
          int place = random.nextInt(lines.length(to));
          lines.swap(from, at, count, to, place, random.nextInt(lines.length(to) - place + 1));
        } else {
          within(lines, from, at, random);
        }
      }
      default -> within(lines, from, at, random);
    }
  }

  private static void within(Lines lines, int press, int at, SplittableRandom random) {
    int later = at + 1 + random.nextInt(lines.length(press) - at - 1);
    int count = 1 + random.nextInt(later - at);
    lines.swapWithin(press, at, count, later, 1 + random.nextInt(lines.length(press) - later));
  }

  private static String text(Lines lines) {
    StringBuilder text = new StringBuilder();
    for (int press = 0; press < lines.lengths().length; press++) {
      text.append(Arrays.toString(Arrays.copyOf(lines.runs()[press], lines.length(press))));
    }
    return text.toString();
  }
}
