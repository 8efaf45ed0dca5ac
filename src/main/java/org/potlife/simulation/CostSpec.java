package org.potlife.simulation;

/**
 * Prices of the soft score, 1/1000 of the plant currency.
 *
 * @param setUpPerHour set-up
 * @param overtimePerHour overtime
 * @param emptyBeltPerHour belt in use but empty
 * @param runShiftedPerHour published run earlier or later, were it to start now; see {@link Change}
 * @param pressChanged published run on another press
 * @param orderSwapped two neighbours on a press the other way round than published
 * @param finishPerHour later end of the whole plan
 * @param thinSlackPerHour slack missing to the wanted slack
 * @param wantedSlackS wanted slack, s
 * @param lightBeforeDark activated ink on light cloth before dark cloth
 */
public record CostSpec(
    long setUpPerHour,
    long overtimePerHour,
    long emptyBeltPerHour,
    long runShiftedPerHour,
    long pressChanged,
    long orderSwapped,
    long finishPerHour,
    long thinSlackPerHour,
    int wantedSlackS,
    long lightBeforeDark) {}
