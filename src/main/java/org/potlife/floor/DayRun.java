package org.potlife.floor;

import org.potlife.sheet.PlanSheet.RunLine;

/**
 * A run of which something was told, beside what was planned of it.
 *
 * @param planned its line on the plan in force when the first thing was told of it
 */
public record DayRun(RunReport told, RunLine planned) {}
