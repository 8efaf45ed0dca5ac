/**
 * What happened in the shop, in the order in which it was recorded.
 *
 * <p>Other packages announce their changes as CDI events within their transactions; this package
 * writes them down, so that a change and its record are stored together or not at all.
 */
package org.potlife.event;
