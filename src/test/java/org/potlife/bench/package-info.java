/**
 * Benchmarks of the planning engine: seeded plants that resemble the demo plant at any size, and
 * what the engine makes of them. Run by hand, see docs/benchmarks.md; the test run only smokes
 * them.
 */
package org.potlife.bench;
