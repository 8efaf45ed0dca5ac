package org.potlife.plan.list;

/**
 * An ink as it is shown: always by name, the colour beside it.
 *
 * @param ink id of the ink
 * @param swatch its colour as {@code #rrggbb}; white when the shop no longer has the ink
 */
public record InkChip(String ink, String swatch) {

  static final String UNKNOWN = "#ffffff";
}
