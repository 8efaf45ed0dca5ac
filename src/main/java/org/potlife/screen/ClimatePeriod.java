package org.potlife.screen;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import java.time.LocalTime;

/**
 * Expected climate from a time of day until the next period starts, every day, in local time.
 *
 * @param from start of the period
 * @param temperatureC degrees Celsius, -10 to 50
 * @param humidityPercent relative humidity, 0 to 100
 */
public record ClimatePeriod(
    @NotNull LocalTime from,
    @NotNull @DecimalMin("-10") @DecimalMax("50") Double temperatureC,
    @NotNull @DecimalMin("0") @DecimalMax("100") Double humidityPercent) {}
