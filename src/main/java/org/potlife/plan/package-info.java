/**
 * Plans: asked for, solved in the background, audited, published, superseded.
 *
 * <p>{@link org.potlife.plan.Plans} is the way to them. A plan keeps the set-up and the orders it
 * was made from ({@link org.potlife.plan.PlanBasis}), so that its lists, its audit and its answer
 * to "why" stay true whatever changes later. It is solved by a job of the job library that survives
 * the end of the process, one at a time per plant ({@code plan.internal}). When a plant changes, a
 * plan is asked for by itself once the changes have settled. What each room reads is in {@link
 * org.potlife.plan.list}, its files in {@link org.potlife.plan.export}.
 */
package org.potlife.plan;
