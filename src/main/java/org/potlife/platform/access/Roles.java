package org.potlife.platform.access;

/**
 * The names of the roles, for {@code @RolesAllowed}. Who has one role has others with it: see
 * {@link Role}. So a page for everybody in the shop names {@link #VIEWER} alone.
 */
public final class Roles {

  /** Reads all lists and pages. Every person has it. */
  public static final String VIEWER = "viewer";

  /** The press crew: tells of runs, presses, dryers and trial prints. */
  public static final String PRESS = "press";

  /** The ink room: tells of batches and of ink on the shelf. */
  public static final String INK_ROOM = "ink-room";

  /** The screen room: tells of climate, emulsion and screens. */
  public static final String SCREEN_ROOM = "screen-room";

  /** Orders, set-up, plans, and all that the rooms may. */
  public static final String PLANNER = "planner";

  /** Accounts and tokens, nothing else. */
  public static final String ADMINISTRATOR = "administrator";

  /**
   * ERP or web shop, by token: sends orders and receipts of garments, reads what became of them.
   */
  public static final String ERP = "erp";

  /** A monitoring system, by token: reads the figures of operation. */
  public static final String METRICS = "metrics";

  private Roles() {}
}
