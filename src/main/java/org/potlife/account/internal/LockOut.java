package org.potlife.account.internal;

import java.time.Duration;
import java.time.Instant;

/**
 * How long nobody may try a password again after failures in a row: not at all for the first few,
 * then longer each time.
 *
 * @param free failures without a delay
 * @param longest the delay stops growing here
 * @param daily whether there is one try a day once there were too many in a row
 */
record LockOut(int free, Duration longest, boolean daily) {

  private static final Duration LONGEST = Duration.ofMinutes(15);

  /** Failures on one account from one network, or from one browser that is known to it. */
  static final LockOut OF_SENDER = new LockOut(5, LONGEST, true);

  /** Failures on one account from all browsers that are not known to it, wherever they are. */
  static final LockOut OF_ACCOUNT = new LockOut(100, LONGEST, false);

  /** Failures from one address: a shop may share one, so there are more before it waits. */
  static final LockOut OF_ADDRESS = new LockOut(30, LONGEST, false);

  private static final Duration FIRST = Duration.ofSeconds(30);

  /**
   * NIST SP 800-63B, section 5.2.2: no more than 100 consecutive failed attempts on an account.
   * From there on one a day for that sender, unless an administrator sets a new password.
   */
  static final int MOST_IN_A_ROW = 100;

  private static final Duration AFTER_MOST = Duration.ofDays(1);

  /** Without another failure for so long all are forgotten, unless there were too many. */
  private static final Duration FORGOTTEN_AFTER = Duration.ofDays(1);

  /**
   * The delay after the last of so many failures.
   *
   * @return zero while there are few
   */
  Duration delay(int failures) {
    if (daily && failures >= MOST_IN_A_ROW) {
      return AFTER_MOST;
    }
    if (failures < free) {
      return Duration.ZERO;
    }
    // 2^10 half minutes is far beyond the longest delay
    Duration grown = FIRST.multipliedBy(1L << Math.min(failures - free, 10));
    return grown.compareTo(longest) < 0 ? grown : longest;
  }

  /** How long is still to wait at {@code now}; zero when one may try. */
  Duration left(int failures, Instant last, Instant now) {
    Duration delay = delay(failures);
    Duration left = Duration.between(now, last.plus(delay));
    // the database rounds what it keeps, so a failure can lie in the future by a part of a
    // microsecond
    return delay.isZero() || left.isNegative() ? Duration.ZERO : left;
  }

  /** Failures that still count at {@code now}. */
  int counting(int failures, Instant last, Instant now) {
    boolean old = now.isAfter(last.plus(FORGOTTEN_AFTER));
    return old && !(daily && failures >= MOST_IN_A_ROW) ? 0 : failures;
  }
}
