/**
 * Pages for people: the lists of a plan as sheets for the wall (A4, black on white, no script), and
 * the start page that leads to them.
 *
 * <p>Templates are type-safe Qute files; all text from outside is escaped by the engine. Times are
 * shown in the plant's zone to the minute, rounded to the safe side by {@link
 * org.potlife.web.WallTime}. Inks are always named, their colour stands beside the name.
 */
package org.potlife.web;
