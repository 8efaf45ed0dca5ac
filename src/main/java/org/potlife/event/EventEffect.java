package org.potlife.event;

import java.util.List;
import org.potlife.platform.problem.FieldError;

/**
 * What one type of shop event changes. A CDI bean per type; who may tell it is said by {@link
 * EventReporters}.
 *
 * @param <D> shape of the event's data; its constraints are checked before
 */
public interface EventEffect<D extends Record> {

  /** The type without its prefix, for example climate.reading. */
  String type();

  /** Shape of the data. */
  Class<D> data();

  /**
   * What is wrong with the data besides its shape; pointers begin at the data. The request is then
   * refused as a whole.
   */
  default List<FieldError> check(ShopEvent event, D data) {
    return List.of();
  }

  /**
   * Lets the event take effect, within the transaction that records it and under the plant's lock.
   * Changes nothing when it parks the event.
   */
  Verdict apply(ShopEvent event, D data);

  /**
   * What became of an event.
   *
   * @param movesPlan whether plans made before are stale now
   * @param contradiction what of the shop's state it contradicts, with the remedy; null when it
   *     took effect
   */
  record Verdict(boolean movesPlan, String contradiction) {

    /** Recorded; plans stay as they are. */
    public static Verdict noted() {
      return new Verdict(false, null);
    }

    /** It took effect, and plans made before are stale. */
    public static Verdict movesPlan(boolean moves) {
      return new Verdict(moves, null);
    }

    /** It contradicts what is known: kept aside, without effect. */
    public static Verdict parked(String contradiction) {
      return new Verdict(false, contradiction);
    }
  }
}
