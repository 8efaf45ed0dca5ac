/**
 * SQL, stream and webhooks of the outbox; closed to other packages.
 *
 * <p>{@code ChangeTeller} hears of changes and puts notices into the {@code WrittenOutbox}. {@code
 * OutboxBell} listens to the database and wakes {@code StreamHub} and {@code HookJobs}. A stream
 * reads from the plant's {@code Tail} in memory or, when it lies further back, from the table: what
 * a slow reader has not read yet waits there and not in memory.
 */
package org.potlife.outbox.internal;
