/**
 * The screens of the rooms: each one list in the working order of the day, with what is to be
 * marked. A mark is a shop event; the screens keep nothing of their own.
 */
package org.potlife.web.room;
