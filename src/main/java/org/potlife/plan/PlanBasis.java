package org.potlife.plan;

import java.util.List;
import org.potlife.floor.FloorReport;
import org.potlife.ink.InkReport;
import org.potlife.order.Order;
import org.potlife.plan.list.PlanIndex;
import org.potlife.planning.Instructions;
import org.potlife.room.RoomState;
import org.potlife.sheet.PlanSheet;
import org.potlife.shop.Shop;

/**
 * What a plan was made from.
 *
 * @param shop the plant's set-up at that time
 * @param orders the orders that were open at that time
 * @param published id of the plan in force at that time, whose frozen runs had to stay; or null
 * @param rooms what the screen room had reported up to that time
 * @param ink what the ink room had told up to that time
 * @param floor what the press crew had told up to that time
 * @param instructions what the planner had decided himself
 */
public record PlanBasis(
    Shop shop,
    List<Order> orders,
    String published,
    RoomState rooms,
    InkReport ink,
    FloorReport floor,
    Instructions instructions) {

  public PlanBasis {
    orders = List.copyOf(orders);
    rooms = rooms == null ? RoomState.NOTHING : rooms;
    ink = ink == null ? InkReport.NOTHING : ink;
    floor = floor == null ? FloorReport.NOTHING : floor;
    instructions = instructions == null ? Instructions.NONE : instructions;
  }

  /** Of a plant whose press crew has told nothing and whose planner has decided nothing himself. */
  public PlanBasis(
      Shop shop, List<Order> orders, String published, RoomState rooms, InkReport ink) {
    this(shop, orders, published, rooms, ink, FloorReport.NOTHING, Instructions.NONE);
  }

  /** A plan that was made from this, to make lists from. */
  public PlanIndex index(PlanSheet sheet) {
    return new PlanIndex(shop, orders, sheet, ink, rooms.climate());
  }
}
