/**
 * What the rooms report. The screen room's climate readings, looks at the emulsion and broken
 * screens come in as shop events ({@code room.internal}: one effect per type) and are read back
 * from the log as one {@link org.potlife.room.RoomState} per plant; looks at the emulsion also
 * teach the airflow of the cabinets ({@link org.potlife.screen.Calibration}). Where a screen is in
 * its life and how tight its mesh is, is noted and shown ({@link org.potlife.room.ScreenStatus}).
 * The ink room's book ({@link org.potlife.room.InkBook}) holds the fate of every gram of every
 * batch and container: each shop event of the ink room books, a booking of more than is left is
 * kept aside, nothing is ever taken out. A plan is made from both as they stand and keeps them, so
 * that its audit stays true whatever is reported later.
 */
package org.potlife.room;
