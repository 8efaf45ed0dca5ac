/**
 * The lists of a plan as files for a spreadsheet: CSV after RFC 4180, one header row with units in
 * the names, instants with the plant's offset. Text from orders is neutralised, so that no cell is
 * taken for a formula.
 */
package org.potlife.plan.export;
