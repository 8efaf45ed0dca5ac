/**
 * Who may do what: the words for roles, and who makes the present request.
 *
 * <p>Every method that answers a request names the {@link org.potlife.platform.access.Roles} that
 * may call it with {@code @RolesAllowed}, or {@code @PermitAll}; what names nothing is for planners
 * alone. Accounts, tokens and sessions are in {@code org.potlife.account}; features know only this
 * package.
 */
package org.potlife.platform.access;
