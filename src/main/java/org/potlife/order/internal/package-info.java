/** REST and SQL of the orders; closed to other packages. */
package org.potlife.order.internal;
