package org.potlife.order;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.OffsetDateTime;

/**
 * What the plan in force says of an order.
 *
 * @param plannedFinish last garment off the belt; null when the order is not placed
 * @param lateMinutes minutes after the due date, rounded up, at least 0
 * @param cause why it is late or not placed; null when it is neither
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Promise(OffsetDateTime plannedFinish, long lateMinutes, String cause) {}
