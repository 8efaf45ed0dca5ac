/**
 * What others are told: plans, promises, orders and what was taken in, as CloudEvents 1.0.
 *
 * <p>An event is written within the transaction of the change that it tells of, so that neither is
 * there without the other. Its number counts within the plant: without a gap, and in the order of
 * the commits, because a transaction takes its numbers at its very end, under the lock of one row
 * that it keeps until it is committed. A number that comes from a database sequence would have
 * neither property, and the plant's own lock is not held by everyone who changes something: the
 * solving job stores a plan without it.
 *
 * <p>From the table the events go out on two ways: as a stream of server-sent events, which is told
 * of news by PostgreSQL's notifications and looks by itself every few seconds, and to webhooks,
 * which jobs of the job library serve. Both deliver at least once and in order.
 */
package org.potlife.outbox;
