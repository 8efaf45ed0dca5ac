/** REST of the close-out and where it reads from; closed to other packages. */
package org.potlife.closeout.internal;
