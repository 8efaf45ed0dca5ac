/** Effects and SQL of what the press crew tells; closed to other packages. */
package org.potlife.floor.internal;
