package org.potlife.plan;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import org.potlife.sheet.PlanSheet.PlanScore;

/**
 * A plan in one line.
 *
 * @param version counts the plans of the plant, from 1
 * @param stale whether the plant's set-up or orders have changed since the plan read them
 * @param solveSeconds search time that was asked for, seconds
 * @param requestedAt when it was asked for
 * @param plannedAt the moment from which it counts; null before the search begins
 * @param finishedAt when the search ended
 * @param publishedAt when it came into force
 * @param failure why no plan came out; only when failed
 * @param auditPassed whether no rule is broken; null before the audit
 * @param score what it is worth; null before it stands
 * @param origin who asked for it
 * @param restores id of the earlier plan that it brings back; null unless it does
 * @param held why it waits for the planner though the plant lets the service publish; else null
 * @param stability how far it is from the plan that was in force when it was made; null when there
 *     was none, and before it stands
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record PlanSummary(
    String id,
    String plant,
    int version,
    PlanState state,
    LocalDate day,
    boolean stale,
    int solveSeconds,
    long seed,
    OffsetDateTime requestedAt,
    OffsetDateTime plannedAt,
    OffsetDateTime finishedAt,
    OffsetDateTime publishedAt,
    String failure,
    Boolean auditPassed,
    PlanScore score,
    PlanOrigin origin,
    String restores,
    String held,
    Stability stability) {}
