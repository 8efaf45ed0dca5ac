/**
 * What all screens share: the frame with the ways to the rooms, the plant's clock, the signs for a
 * lost connection and an old plan, units and texts.
 *
 * <p>A screen is a Qute template that includes {@code shell.html} and is given a {@link
 * org.potlife.web.shell.Shell}. Scripts are plain modules under {@code /ui}; nothing is inline, so
 * that a content security policy of the own origin alone holds. A form that a script sends has the
 * method {@code dialog}: outside a dialog it does nothing, so that a touch before the script is
 * there leads nowhere.
 */
package org.potlife.web.shell;
