package org.potlife.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class InkLedgerTest {

  private static final InkLedger BATCH = InkLedger.planned(1000).mixed(1010).activated(60);

  @Test
  void theFateOfEveryGramOfADischargeBatch() {
    InkLedger closed = BATCH.used(700, 80).discarded(250).emptied();
    assertThat(closed).isEqualTo(new InkLedger(1000, 1010, 60, 0, 700, 80, 0, 250, 40));
    assertThat(closed.leftG()).isZero();
  }

  @Test
  void moreThanIsLeftCannotGoOut() {
    InkLedger used = BATCH.used(1000, 0);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> used.discarded(71))
        .withMessage("1 g more went out than came in");
    assertThatIllegalArgumentException().isThrownBy(() -> used.used(0, 100));
    assertThatIllegalArgumentException().isThrownBy(() -> used.returned(-5));
  }

  @Test
  void aCountCorrectsTheBooksAndIsSeenInThem() {
    InkLedger counted = InkLedger.stocked(500).used(100, 0).counted(380);
    assertThat(counted.leftG()).isEqualTo(380);
    assertThat(counted.foundG()).isEqualTo(-20);
  }

  @Property
  void whatCameInIsWhatWentOutAndWhatIsLeft(@ForAll("days") List<int[]> bookings) {
    InkLedger book = InkLedger.planned(5000);
    for (int[] booking : bookings) {
      book = booked(book, booking[0], booking[1]);
      assertThat(book.leftG()).isNotNegative();
    }
    InkLedger end = book.emptied();
    assertThat(end.mixedG() + end.agentG() + end.foundG())
        .isEqualTo(
            end.printedG() + end.screensG() + end.returnedG() + end.discardedG() + end.lostG());
  }

  /** What can be booked is booked; what is more than is left is refused and changes nothing. */
  private static InkLedger booked(InkLedger book, int kind, int g) {
    if (g > book.leftG() && kind >= 2 && kind <= 5) {
      assertThatIllegalArgumentException().isThrownBy(() -> out(book, kind, g));
      return book;
    }
    return switch (kind) {
      case 0 -> book.mixed(g);
      case 1 -> book.activated(g);
      case 6 -> book.counted(g);
      case 7 -> book.emptied();
      default -> out(book, kind, g);
    };
  }

  private static InkLedger out(InkLedger book, int kind, int g) {
    return switch (kind) {
      case 2 -> book.used(g, 0);
      case 3 -> book.used(0, g);
      case 4 -> book.returned(g);
      default -> book.discarded(g);
    };
  }

  @Provide
  Arbitrary<List<int[]>> days() {
    return Combinators.combine(
            Arbitraries.integers().between(0, 7), Arbitraries.integers().between(0, 3000))
        .as((kind, g) -> new int[] {kind, g})
        .list()
        .ofMaxSize(40);
  }
}
