/**
 * Start-up, the clock, and what every HTTP face shares.
 *
 * <p>{@link org.potlife.platform.Potlife} is the process's entry: it starts the embedded PostgreSQL
 * ({@code platform.db}) when no other is configured and then Quarkus. {@code platform.problem}
 * turns every failure into a problem document, {@code platform.json} reads bodies and reports all
 * that is wrong with them. No feature package is known here; nobody else touches the system clock.
 */
package org.potlife.platform;
