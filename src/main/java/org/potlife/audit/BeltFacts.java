package org.potlife.audit;

import org.potlife.dryer.Dryer;
import org.potlife.sheet.PlanSheet.BeltLine;

/** A line of a belt's timetable that could be read. Times are epoch seconds, speed m/min. */
record BeltFacts(BeltLine line, Dryer dryer, long from, long to, double speedMPerMin) {}
