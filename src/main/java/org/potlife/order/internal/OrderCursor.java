package org.potlife.order.internal;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Base64;
import org.potlife.order.OrderQuery;
import org.potlife.order.StoredOrder;
import org.potlife.platform.problem.ProblemException;

/** A place in the list of orders as a word that clients hand back unread. */
final class OrderCursor {

  private OrderCursor() {}

  static String after(StoredOrder last) {
    String place =
        last.order().dueAt().toInstant().truncatedTo(ChronoUnit.MICROS)
            + " "
            + last.order().reference();
    return Base64.getUrlEncoder()
        .withoutPadding()
        .encodeToString(place.getBytes(StandardCharsets.UTF_8));
  }

  static OrderQuery.After read(String cursor) {
    try {
      String place = new String(Base64.getUrlDecoder().decode(cursor), StandardCharsets.UTF_8);
      int gap = place.indexOf(' ');
      String reference = place.substring(gap + 1);
      if (gap > 0 && reference.matches("[A-Za-z0-9._~-]{1,60}")) {
        return new OrderQuery.After(Instant.parse(place.substring(0, gap)), reference);
      }
    } catch (IllegalArgumentException | DateTimeException e) {
      // said below
    }
    throw ProblemException.badRequest(
        "The cursor is not one. Take next from the page before, or leave it out.");
  }
}
