/** REST and SQL of the set-up; closed to other packages. */
package org.potlife.shop.internal;
