/**
 * What the rooms report: climate readings, looks at the emulsion, broken screens.
 *
 * <p>The reports come in as shop events ({@code room.internal}: one effect per type) and are read
 * back from the log as one {@link org.potlife.room.RoomState} per plant. A plan is made from it and
 * keeps it, so that its audit stays true whatever is reported later.
 */
package org.potlife.room;
