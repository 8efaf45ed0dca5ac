package org.potlife.account.internal;

import java.time.Duration;
import java.time.Instant;

/**
 * How long nobody may try a password again after failures in a row: not at all for the first few,
 * then longer each time.
 *
 * @param free failures without a delay
 * @param longest the delay stops growing here
 */
record LockOut(int free, Duration longest) {

  /** Failures on one account. */
  static final LockOut OF_ACCOUNT = new LockOut(5, Duration.ofMinutes(15));

  /** Failures from one address: a shop may share one, so there are more before it waits. */
  static final LockOut OF_ADDRESS = new LockOut(30, Duration.ofMinutes(15));

  private static final Duration FIRST = Duration.ofSeconds(30);

  /**
   * NIST SP 800-63B, section 5.2.2: no more than 100 consecutive failed attempts on an account.
   * From there on one a day, unless an administrator sets a new password.
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
    if (failures >= MOST_IN_A_ROW) {
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
    Duration left = Duration.between(now, last.plus(delay(failures)));
    return left.isNegative() ? Duration.ZERO : left;
  }

  /** Failures that still count at {@code now}. */
  int counting(int failures, Instant last, Instant now) {
    boolean old = now.isAfter(last.plus(FORGOTTEN_AFTER));
    return old && failures < MOST_IN_A_ROW ? 0 : failures;
  }
}
