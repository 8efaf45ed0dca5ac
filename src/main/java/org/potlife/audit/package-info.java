/**
 * The independent check of a finished plan, rule by rule.
 *
 * <p>Planning makes plans that are feasible by construction; this package does not believe it. It
 * takes the set-up of the shop, the open orders and the plan as written down for people, and states
 * every rule of the shop a second time, from {@code docs/model.md} alone. It shares no line with
 * the simulation: where both agree, a mistake would have to have been made twice.
 *
 * <pre>
 * AuditReport report = Audit.of(shop, orders, sheet, published);
 * if (!report.passed()) { report.findings().forEach(...); }
 * </pre>
 *
 * <p>How it works:
 *
 * <ol>
 *   <li>{@link org.potlife.audit.EvidenceReader} reads the sheet once. Lines that cannot be read
 *       (missing fields, unknown names, times out of order) become findings of {@code R0} and are
 *       left out of the rest, so no rule meets a null and a broken sheet never ends in an
 *       exception.
 *   <li>Each rule is one small class named like the rule. It looks at the {@link
 *       org.potlife.audit.Evidence}, counts every fact that it checks and notes what it finds, with
 *       what was found, what is allowed and who is concerned.
 *   <li>{@link org.potlife.audit.Tolerance} holds every tolerance, each with its reason.
 * </ol>
 *
 * <p>Pure functions of their input: no framework, no I/O, no clock.
 */
package org.potlife.audit;
