/** Accounts, tokens, sessions, trail: rules, tables and pages; closed to other packages. */
package org.potlife.account.internal;
