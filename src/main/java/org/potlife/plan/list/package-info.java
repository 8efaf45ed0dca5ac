/**
 * What each room reads of a plan: the ink room's activations, the screen room's stages and cabinet
 * loads, the press crews' runs, the belts' timetable, and the orders that end late or have no
 * place.
 *
 * <p>Plain values and the mapping to them, from a {@link org.potlife.sheet.PlanSheet} and the shop
 * and orders it was made for. No framework, no clock, no formatting: masses stay whole grams and
 * times stay instants with the plant's offset; pages and files dress them.
 */
package org.potlife.plan.list;
