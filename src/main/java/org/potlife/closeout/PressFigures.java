package org.potlife.closeout;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * The figures of ISO 22400-2 for one press, or for all of them together, on one day. Times are
 * minutes, ratios shares from 0 on; a ratio whose denominator is nothing is null.
 *
 * @param plannedBusyMinutes PBT: the staffed time of the day
 * @param busyMinutes AUBT: staffed time in which a run was on the press, also while it was down
 * @param setUpMinutes AUST: set-up in staffed time with the press up
 * @param productionMinutes APT: printing in staffed time with the press up
 * @param downMinutes staffed time in which the press or its dryer was down
 * @param executionMinutes AOET: from each run's beginning to its end by the clock, summed
 * @param plannedMinutes PRU x PQ: what the pieces printed after the set-ups should have taken
 * @param pieces PQ: printed pieces, good and spoiled
 * @param good GQ
 * @param spoiled SQ
 */
public record PressFigures(
    String press,
    double plannedBusyMinutes,
    double busyMinutes,
    double setUpMinutes,
    double productionMinutes,
    double downMinutes,
    double executionMinutes,
    double plannedMinutes,
    int pieces,
    int good,
    int spoiled) {

  /** AUBT / PBT. */
  @JsonProperty("allocation")
  public Double allocation() {
    return ratio(busyMinutes, plannedBusyMinutes);
  }

  /** APT / AUBT. */
  @JsonProperty("utilisation")
  public Double utilisation() {
    return ratio(productionMinutes, busyMinutes);
  }

  /** APT / PBT, which is allocation times utilisation. */
  @JsonProperty("availability")
  public Double availability() {
    return ratio(productionMinutes, plannedBusyMinutes);
  }

  /** AUST / AUPT, where AUPT = AUST + APT. */
  @JsonProperty("setUpRate")
  public Double setUpRate() {
    return ratio(setUpMinutes, setUpMinutes + productionMinutes);
  }

  /** PRU x PQ / APT. */
  @JsonProperty("effectiveness")
  public Double effectiveness() {
    return ratio(plannedMinutes, productionMinutes);
  }

  /** GQ / PQ. */
  @JsonProperty("qualityRatio")
  public Double qualityRatio() {
    return ratio(good, pieces);
  }

  /** SQ / PQ. */
  @JsonProperty("scrapRatio")
  public Double scrapRatio() {
    return ratio(spoiled, pieces);
  }

  /** Availability x effectiveness x quality ratio. */
  @JsonProperty("oeeIndex")
  public Double oeeIndex() {
    Double availability = availability();
    Double effectiveness = effectiveness();
    Double quality = qualityRatio();
    return availability == null || effectiveness == null || quality == null
        ? null
        : availability * effectiveness * quality;
  }

  /** PQ / AOET, pieces per hour. */
  @JsonProperty("throughputPerHour")
  public Double throughputPerHour() {
    Double perMinute = ratio(pieces, executionMinutes);
    return perMinute == null ? null : perMinute * 60;
  }

  private static Double ratio(double of, double by) {
    return by <= 0 ? null : of / by;
  }

  /** Two presses taken together. */
  PressFigures plus(PressFigures other) {
    return new PressFigures(
        press,
        plannedBusyMinutes + other.plannedBusyMinutes,
        busyMinutes + other.busyMinutes,
        setUpMinutes + other.setUpMinutes,
        productionMinutes + other.productionMinutes,
        downMinutes + other.downMinutes,
        executionMinutes + other.executionMinutes,
        plannedMinutes + other.plannedMinutes,
        pieces + other.pieces,
        good + other.good,
        spoiled + other.spoiled);
  }

  static PressFigures nothing(String press) {
    return new PressFigures(press, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
  }
}
