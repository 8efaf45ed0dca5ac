/**
 * Orders: what the ERP pushes, checked and kept, and what is promised for it.
 *
 * <p>{@link org.potlife.order.Orders} is the way to them, {@link org.potlife.order.OrderCheck}
 * holds the rules across fields. Each change is announced as an {@link
 * org.potlife.order.OrderChange} within its transaction. What the plan promises comes in through
 * {@link org.potlife.order.PromiseLookup}, so that this package knows no plans.
 */
package org.potlife.order;
