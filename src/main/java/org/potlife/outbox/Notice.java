package org.potlife.outbox;

import java.time.Instant;

/**
 * Something that others are told.
 *
 * @param source where it happened (CloudEvents {@code source})
 * @param id unique within the source
 * @param type without the prefix {@code org.potlife.}, for example plan.published
 * @param subject what it is about within the source; or null
 * @param time when it happened
 * @param data what happened; written as JSON
 */
public record Notice(
    String plant,
    String source,
    String id,
    String type,
    String subject,
    Instant time,
    Object data) {}
