package org.potlife.simulation;

import java.util.Arrays;

/**
 * Everything that changes while runs are placed. Copied as a whole for a checkpoint, so that a new
 * sequence is simulated only from where it differs.
 */
final class ShopState {

  /** Live batches remembered per ink; older ones are not drawn from any more. */
  static final int BATCHES_PER_INK = 4;

  /** In the place of a batch's day: ink from the shelf serves every day. */
  static final int ANY_DAY = -1;

  /** In the place of a batch's day: activated before the plan's first day, it serves no other. */
  static final int EARLIER_DAY = -2;

  /** Costs that follow from the ends of orders; all others add up step by step. */
  private static final int FINISH = CostKind.FINISH.ordinal();

  private static final int THIN_SLACK = CostKind.THIN_SLACK.ordinal();

  final BeltBook[] belts;
  final ScreenRoomState screens;
  final MixerBook mixers;

  final int[] pressFree;
  final int[] pressLast;
  final int[] position;
  final int[] lotFree;
  final int[] lotStage;
  final int[] orderEnd;
  final int[] setFree;
  final int[] setLeft;
  final int[] setPress;

  final int[] batchReady;
  final int[] batchUseBy;
  final int[] batchRoomG;
  final int[] batchDay;
  final int[] batchId;
  final int[][] batchColumns;
  final int[] inkDay;
  final double[] inkLightness;

  int batches;
  int unplaced;
  long weightedLateMinutes;
  int lastOff;
  final long[] costMilli = new long[CostKind.values().length];

  ShopState(Problem problem) {
    belts = new BeltBook[problem.dryers().length];
    for (int i = 0; i < belts.length; i++) {
      belts[i] = new BeltBook(problem.dryers()[i].maxSpeed());
    }
    screens = new ScreenRoomState(problem.screenRoom(), problem.sets());
    mixers = new MixerBook(problem.inkRoom());
    int presses = problem.presses().length;
    pressFree = new int[presses];
    pressLast = new int[presses];
    position = new int[presses];
    lotFree = new int[problem.lots()];
    lotStage = new int[problem.lots()];
    orderEnd = new int[problem.orders().length];
    int sets = problem.sets().length;
    setFree = new int[sets];
    setLeft = new int[sets];
    setPress = new int[sets];
    int slots = problem.inks().length * BATCHES_PER_INK;
    batchReady = new int[slots];
    batchUseBy = new int[slots];
    batchRoomG = new int[slots];
    batchDay = new int[slots];
    batchId = new int[slots];
    batchColumns = new int[][] {batchReady, batchUseBy, batchRoomG, batchDay, batchId};
    inkDay = new int[problem.inks().length];
    inkLightness = new double[problem.inks().length];
    begin(problem);
  }

  private void begin(Problem problem) {
    TakenOver before = problem.takenOver();
    for (int i = 0; i < pressFree.length; i++) {
      PressSpec press = problem.presses()[i];
      pressFree[i] = Math.max(press.openFrom(), before.pressFree()[i]);
      pressLast[i] = press.mounted();
    }
    System.arraycopy(before.lotFree(), 0, lotFree, 0, lotFree.length);
    System.arraycopy(before.lotStage(), 0, lotStage, 0, lotStage.length);
    System.arraycopy(before.setFree(), 0, setFree, 0, setFree.length);
    for (int i = 0; i < setLeft.length; i++) {
      setLeft[i] = problem.sets()[i].runs();
      setPress[i] = before.setPress()[i];
    }
    for (TakenOver.BeltLoad load : before.belts()) {
      belts[load.dryer()].occupy(load.from(), load.to(), load.speedLimit());
      belts[load.dryer()].feed(load.from(), load.to(), load.area(), load.heat());
    }
    for (TakenOver.BeltTail tail : before.tails()) {
      belts[tail.dryer()].hold(tail.from(), tail.to(), tail.leastSpeed());
    }
    for (TakenOver.Busy busy : before.mixing()) {
      mixers.book(busy.lane(), busy.from(), busy.to());
    }
    for (TakenOver.Busy busy : before.hands()) {
      screens.places[busy.kind()].block(busy.lane(), busy.from(), busy.to());
    }
    for (TakenOver.CabinetLoad load : before.loads()) {
      screens.cabinets[load.cabinet()].block(load.from(), load.to(), load.stage(), load.frames());
    }
    for (int mesh = 0; mesh < before.frames().length; mesh++) {
      screens.frames[mesh].begin(before.frames()[mesh]);
    }
    Arrays.fill(batchUseBy, -1);
    before.batches().forEach(batch -> takeOver(problem, batch));
    Arrays.fill(inkDay, -1);
    Arrays.fill(orderEnd, -1);
    for (int order = 0; order < orderEnd.length; order++) {
      if (before.orderEnd()[order] >= 0) {
        finish(problem, order, before.orderEnd()[order]);
      }
    }
  }

  private void takeOver(Problem problem, TakenOver.LiveBatch batch) {
    int slot = slotFor(batch.ink(), batch.useBy());
    int day = problem.dayStart().length - 1;
    while (day > 0 && problem.dayStart()[day] > batch.done()) {
      day--;
    }
    if (problem.inks()[batch.ink()].activated() && batch.done() < problem.dayStart()[0]) {
      day = EARLIER_DAY;
    }
    batchReady[slot] = batch.ready();
    batchUseBy[slot] = batch.useBy();
    batchRoomG[slot] = batch.roomG();
    batchDay[slot] = batch.stock() ? ANY_DAY : day;
    batchId[slot] = batches;
    batches++;
  }

  /**
   * Makes room for a batch. The batches of an ink stand in the order in which they end; the one
   * that ends first gives way.
   */
  int slotFor(int ink, int useBy) {
    int slot = ink * BATCHES_PER_INK;
    int lastSlot = slot + BATCHES_PER_INK - 1;
    while (slot < lastSlot && batchUseBy[slot + 1] <= useBy) {
      for (int[] column : batchColumns) {
        column[slot] = column[slot + 1];
      }
      slot++;
    }
    return slot;
  }

  void copyFrom(ShopState other) {
    copyFrom(other, Integer.MIN_VALUE / 2);
  }

  /**
   * @param since no run that is still to come has its first piece before this, s
   */
  void copyFrom(ShopState other, int since) {
    screens.copyFrom(other.screens);
    copyPressesFrom(other, since);
    mixers.copyFrom(other.mixers);
    copy(other.setFree, setFree);
    copyScoreFrom(other);
  }

  /** What is on presses and belts, and the batches there are. */
  private void copyPressesFrom(ShopState other, int since) {
    for (int i = 0; i < belts.length; i++) {
      belts[i].copyFrom(other.belts[i], since);
    }
    copy(other.pressFree, pressFree);
    copy(other.pressLast, pressLast);
    copy(other.lotFree, lotFree);
    copy(other.lotStage, lotStage);
    copy(other.setLeft, setLeft);
    copy(other.setPress, setPress);
    for (int i = 0; i < batchColumns.length; i++) {
      copy(other.batchColumns[i], batchColumns[i]);
    }
    copy(other.inkDay, inkDay);
    System.arraycopy(other.inkLightness, 0, inkLightness, 0, inkLightness.length);
    batches = other.batches;
  }

  /** The other way round: from what was the same on goes to where another went. */
  void catchUpWith(ShopState other, int[] together, int mixersSince) {
    copyPressesFrom(other, Integer.MIN_VALUE / 2);
    for (int set = 0; set < together.length; set++) {
      setFree[set] = other.setFree[set] == together[set] ? setFree[set] : other.setFree[set];
    }
    mixers.copySince(other.mixers, mixersSince);
  }

  private void copyScoreFrom(ShopState other) {
    copyCountsFrom(other);
    copyOrdersFrom(other);
  }

  /** What adds up step by step, and how far the sequences are done. */
  void copyCountsFrom(ShopState other) {
    copy(other.position, position);
    unplaced = other.unplaced;
    for (int kind = 0; kind < costMilli.length; kind++) {
      if (kind != FINISH && kind != THIN_SLACK) {
        costMilli[kind] = other.costMilli[kind];
      }
    }
  }

  /**
   * The base went on to this state; those who came together with it before look the same from here
   * on, but not in what is over. Others that start here may look further back.
   *
   * @param together by set, when it was free in the base where they came together, s
   */
  void copyPastFrom(ShopState other, int[] together, int mixersSince) {
    for (int set = 0; set < together.length; set++) {
      setFree[set] = setFree[set] == together[set] ? other.setFree[set] : setFree[set];
    }
    mixers.copyBefore(other.mixers, mixersSince);
  }

  /** The ends of orders, and what follows from them alone. */
  void copyOrdersFrom(ShopState other) {
    copy(other.orderEnd, orderEnd);
    weightedLateMinutes = other.weightedLateMinutes;
    lastOff = other.lastOff;
    costMilli[FINISH] = other.costMilli[FINISH];
    costMilli[THIN_SLACK] = other.costMilli[THIN_SLACK];
  }

  private static void copy(int[] from, int[] to) {
    System.arraycopy(from, 0, to, 0, to.length);
  }

  /** A run of the order is off the belt at {@code off}: books what that adds to lateness. */
  void finish(Problem problem, int order, int off) {
    CostSpec costs = problem.costs();
    OrderSpec spec = problem.orders()[order];
    int before = orderEnd[order];
    if (off > before) {
      orderEnd[order] = off;
      long late = lateMinutes(spec, off) - (before < 0 ? 0 : lateMinutes(spec, before));
      weightedLateMinutes += late * spec.weight();
      long thin =
          missingSlackS(spec, costs, off) - (before < 0 ? 0 : missingSlackS(spec, costs, before));
      addHourly(CostKind.THIN_SLACK, costs.thinSlackPerHour(), thin);
    }
    if (off > lastOff) {
      addHourly(CostKind.FINISH, costs.finishPerHour(), off - lastOff);
      lastOff = off;
    }
  }

  /** What was off the belt last of an order no longer counts: it ends at {@code end}, or -1. */
  void reopen(Problem problem, int order, int end) {
    int before = orderEnd[order];
    if (before == end) {
      return;
    }
    CostSpec costs = problem.costs();
    OrderSpec spec = problem.orders()[order];
    orderEnd[order] = end;
    long late = (end < 0 ? 0 : lateMinutes(spec, end)) - lateMinutes(spec, before);
    weightedLateMinutes += late * spec.weight();
    long thin =
        (end < 0 ? 0 : missingSlackS(spec, costs, end)) - missingSlackS(spec, costs, before);
    addHourly(CostKind.THIN_SLACK, costs.thinSlackPerHour(), thin);
  }

  private static long lateMinutes(OrderSpec order, int off) {
    return off <= order.dueAt() ? 0 : (off - (long) order.dueAt() + 59) / 60;
  }

  private static long missingSlackS(OrderSpec order, CostSpec costs, int off) {
    long slack = order.dueAt() - (long) off;
    return Math.max(0, costs.wantedSlackS() - Math.max(0, slack));
  }

  /** Costs are kept in 1/1000 currency times seconds per hour where they run by time. */
  void addHourly(CostKind kind, long pricePerHour, long seconds) {
    costMilli[kind.ordinal()] += pricePerHour * seconds;
  }

  void add(CostKind kind, long priceMilli) {
    costMilli[kind.ordinal()] += priceMilli * 3600;
  }

  /** Cost of one kind, 1/1000 of the plant currency. */
  long cost(CostKind kind) {
    return costMilli[kind.ordinal()] / 3600;
  }

  /** All costs, 1/1000 of the plant currency. */
  long costMilli() {
    long sum = 0;
    for (long kind : costMilli) {
      sum += kind / 3600;
    }
    return sum;
  }

  /** Adds up what does not follow from the ends of orders: what another came to, and more. */
  void addUp(ShopState other, long[] moreCost, int moreUnplaced) {
    for (int kind = 0; kind < costMilli.length; kind++) {
      if (kind != FINISH && kind != THIN_SLACK) {
        costMilli[kind] = other.costMilli[kind] + moreCost[kind];
      }
    }
    unplaced = other.unplaced + moreUnplaced;
  }

  /**
   * @param stuck runs that could not be tried
   */
  Outcome outcome(int stuck) {
    return new Outcome(unplaced + stuck, weightedLateMinutes, costMilli());
  }
}
