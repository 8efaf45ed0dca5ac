/**
 * REST, SQL and the solving job of the plans; closed to other packages.
 *
 * <p>{@code SolveJobs} runs the job library over the service's own database. {@code SolveJob} takes
 * one plan from "solving" to "draft" or "failed": it holds the plant's advisory lock on a
 * connection of its own, reads shop and orders, searches, audits, stores. Killed at any point, it
 * is found dead by its missing heartbeat and begun anew.
 */
package org.potlife.plan.internal;
