/** SQL of the event log; closed to other packages. */
package org.potlife.event.internal;
