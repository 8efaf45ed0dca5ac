/** What the resources share: entity tags and preconditions, log context. */
package org.potlife.platform.http;
