/**
 * Who may come in: accounts of people, tokens of programs, sessions, and the trail of who did what.
 *
 * <p>Passwords are kept as Argon2id, all other secrets as SHA-256 of 256 random bits; no secret is
 * kept as it is. While no account exists, whoever sits at this computer may do everything (setting
 * {@code potlife.sign-in}); the first account, made through a link that the log shows, ends that. A
 * browser that writes must come from a page of this service. All of it is in {@code internal}:
 * features name roles of {@code org.potlife.platform.access} and know nothing else.
 */
package org.potlife.account;
