/**
 * A day's close-out: what was planned against what was done, per run, press and order, in the
 * figures of ISO 22400-2, with the ink that was lost and what is carried over into the next day.
 *
 * <p>{@link org.potlife.closeout.PressFigures} and {@link org.potlife.closeout.CloseOut} are plain
 * calculations from records; how they come by these is in {@code internal}. Each figure is defined
 * in docs/model.md, "Figures of a day".
 */
package org.potlife.closeout;
