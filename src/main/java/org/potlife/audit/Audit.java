package org.potlife.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.potlife.floor.FloorReport;
import org.potlife.ink.InkReport;
import org.potlife.order.Order;
import org.potlife.room.RoomState;
import org.potlife.sheet.PlanSheet;
import org.potlife.shop.Shop;

/** Checks a finished plan against every rule of the shop. */
public final class Audit {

  private static final List<Rule> RULES =
      List.of(
          new R1Fit(),
          new R2OneRunAtATime(),
          new R3StaffedTime(),
          new R4ScreensReady(),
          new R5DryBeforeExposure(),
          new R6NoWetAmongDry(),
          new R7ShelfLife(),
          new R8ScreenRoomCapacity(),
          new R9Recipe(),
          new R10PotLife(),
          new R11OnlyTodaysInk(),
          new R12InkRoomCapacity(),
          new R13Leftovers(),
          new R13aLateActivation(),
          new R14Dwell(),
          new R15BeltArea(),
          new R16Water(),
          new R16aStraightIntoTheTunnel(),
          new R17CoolBetweenPrints(),
          new R18Released(),
          new R19DischargeableCloth(),
          new R20Quantity(),
          new R21Promises(),
          new R22WhatHasStartedStays());

  private Audit() {}

  /** Audits a plan of a plant whose rooms have reported nothing. */
  public static AuditReport of(
      Shop shop, List<Order> orders, PlanSheet sheet, Optional<PlanSheet> published) {
    return of(shop, orders, sheet, published, RoomState.NOTHING, InkReport.NOTHING);
  }

  /** Audits a plan of a plant whose press crew has told nothing. */
  public static AuditReport of(
      Shop shop,
      List<Order> orders,
      PlanSheet sheet,
      Optional<PlanSheet> published,
      RoomState rooms,
      InkReport ink) {
    return of(shop, orders, sheet, published, rooms, ink, FloorReport.NOTHING);
  }

  /**
   * Audits a plan. Never throws for what is on the sheet: what cannot be read is a finding.
   *
   * @param shop the plant's set-up, valid in itself
   * @param orders all open orders, valid in themselves
   * @param sheet the plan
   * @param published the plan in force when this one was made, whose frozen runs must stay
   * @param rooms what the rooms had reported when the plan was made
   * @param ink what the ink room had told when the plan was made
   * @param floor what the press crew had told when the plan was made
   */
  public static AuditReport of(
      Shop shop,
      List<Order> orders,
      PlanSheet sheet,
      Optional<PlanSheet> published,
      RoomState rooms,
      InkReport ink,
      FloorReport floor) {
    List<RuleResult> results = new ArrayList<>();
    Notes reading = new Notes(EvidenceReader.NUMBER);
    Evidence evidence =
        new EvidenceReader(shop, orders, sheet, published, rooms, ink, floor, reading).read();
    results.add(reading.result(EvidenceReader.TITLE));
    for (Rule rule : RULES) {
      Notes notes = new Notes(rule.number());
      rule.check(evidence, notes);
      results.add(notes.result(rule.title()));
    }
    return new AuditReport(results);
  }
}
