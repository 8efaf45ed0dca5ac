/**
 * Failures as RFC 9457 problem documents.
 *
 * <p>A {@link org.potlife.platform.problem.ProblemType} is stable: clients may switch on it. The
 * detail is for people and names the remedy. Whatever is not a problem of ours becomes one at the
 * edge, without internals.
 */
package org.potlife.platform.problem;
