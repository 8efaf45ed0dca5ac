/**
 * What happened in the shop, in the order in which it was recorded.
 *
 * <p>Two ways lead into the log. Other packages announce their changes as CDI events within their
 * transactions. And the rooms, presses and the ERP tell what happened as CloudEvents 1.0 (JSON):
 * each type has one {@link org.potlife.event.EventEffect}, found through CDI, that checks what was
 * told against the shop and lets it take effect. Record and effect are stored together or not at
 * all; source and id tell a repetition; what contradicts the shop's state is kept aside with its
 * cause and takes no effect.
 */
package org.potlife.event;
