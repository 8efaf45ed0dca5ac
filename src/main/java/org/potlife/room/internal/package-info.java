/** Effects of the rooms' reports, and how they are read back; closed to other packages. */
package org.potlife.room.internal;
