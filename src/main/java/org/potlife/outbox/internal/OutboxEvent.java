package org.potlife.outbox.internal;

/**
 * A row of the table outbox_event.
 *
 * @param seq number within the plant, from 1, without a gap
 * @param type without prefix
 * @param event the CloudEvent as JSON, one line
 */
record OutboxEvent(long seq, String type, String event) {}
