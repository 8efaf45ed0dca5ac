/**
 * What the rooms report. The ink room's book ({@link org.potlife.room.InkBook}) holds the fate of
 * every gram of every batch and container: each shop event of the ink room books, a booking of more
 * than is left is kept aside, nothing is ever taken out. A plan is made from the book as it stands
 * and keeps that ({@link org.potlife.ink.InkReport}), so that its audit stays true.
 */
package org.potlife.room;
