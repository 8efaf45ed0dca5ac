package org.potlife.outbox.internal;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;

/**
 * A webhook as the API shows it, without its secret.
 *
 * @param types names of types; empty for all
 * @param position number of the event up to which all is delivered or set aside
 * @param behind events of the plant after that
 * @param tries how often the next event has failed
 * @param lastFailure why the last failure was one; null when what came after was delivered
 * @param deadLetters events that were set aside
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record HookView(
    String name,
    String url,
    List<String> types,
    long version,
    long position,
    long behind,
    int tries,
    String lastFailure,
    Instant lastDeliveredAt,
    long deadLetters) {}
