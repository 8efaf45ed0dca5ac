package org.potlife.web.shell;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.ZoneId;
import org.potlife.web.WallTime;

/**
 * How this device shows figures. Grams stay grams everywhere: the scale shows them.
 *
 * @param us lengths in inches, belt speed in feet a minute, temperatures in degrees Fahrenheit
 * @param twelveHours times of day with am and pm
 */
public record Manner(boolean us, boolean twelveHours) {

  /** Name of the cookie that keeps the manner. */
  public static final String COOKIE = "potlife-manner";

  public static final Manner METRIC = new Manner(false, false);

  private static final double MM_PER_INCH = 25.4;
  private static final double M_PER_FOOT = 0.3048;

  /** The manner that a cookie names; metric and 24 hours where it says nothing. */
  public static Manner of(String cookie) {
    return cookie == null ? METRIC : new Manner(cookie.contains("us"), cookie.contains("12h"));
  }

  /** What the cookie keeps. */
  public String cookie() {
    return (us ? "us" : "metric") + "." + (twelveHours ? "12h" : "24h");
  }

  public String units() {
    return us ? "us" : "metric";
  }

  public String clock() {
    return twelveHours ? "12" : "24";
  }

  /** Times in a zone, the date left out on this day. */
  public WallTime times(ZoneId zone, LocalDate day) {
    return new WallTime(zone, day, twelveHours);
  }

  /** A length on cloth or belt. */
  public String length(int mm) {
    return us ? rounded(mm / MM_PER_INCH, 1) + " in" : mm + " mm";
  }

  /** Belt speed, rounded down: a belt set too slow still cures. */
  public String speed(double mPerMin) {
    BigDecimal shown = BigDecimal.valueOf(us ? mPerMin / M_PER_FOOT : mPerMin);
    return shown.setScale(2, RoundingMode.FLOOR).toPlainString() + (us ? " ft/min" : " m/min");
  }

  /** A temperature. */
  public String temperature(double celsius) {
    return us ? rounded(celsius * 9 / 5 + 32, 0) + " \u00b0F" : rounded(celsius, 1) + " \u00b0C";
  }

  private static String rounded(double value, int digits) {
    return BigDecimal.valueOf(value)
        .setScale(digits, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
