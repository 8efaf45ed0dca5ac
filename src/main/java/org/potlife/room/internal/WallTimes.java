package org.potlife.room.internal;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.potlife.shop.Shop;

/** Moments as people read them off the wall: the plant's own clock, to the minute. */
final class WallTimes {

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);

  private WallTimes() {}

  static String of(Shop shop, Instant at) {
    return at == null ? "an unknown time" : TIME.format(at.atZone(shop.timeZone()));
  }
}
