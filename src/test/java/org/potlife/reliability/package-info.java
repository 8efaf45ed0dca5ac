/**
 * What the service survives, shown: killed under load, its database killed, its database away,
 * bodies of nonsense, two instances. Each scenario is a program with a number of rounds and a short
 * run of it in the build; {@code docs/reliability.md} has the figures of the long ones.
 */
package org.potlife.reliability;
