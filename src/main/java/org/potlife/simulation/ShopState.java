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

  final BeltBook[] belts;
  final PlaceBook[] places;
  final CabinetBook[] cabinets;
  final FrameBook[] frames;
  final MixerBook mixers;

  final int[] pressFree;
  final int[] pressLast;
  final int[] position;
  final int[] lotFree;
  final int[] lotStage;
  final int[] orderEnd;
  final int[] setReady;
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
    ScreenRoomSpec room = problem.screenRoom();
    belts = new BeltBook[problem.dryers().length];
    for (int i = 0; i < belts.length; i++) {
      belts[i] = new BeltBook(problem.dryers()[i].maxSpeed());
    }
    places = new PlaceBook[room.places().length];
    for (int i = 0; i < places.length; i++) {
      places[i] = new PlaceBook(room.staffed(), room.places()[i]);
    }
    cabinets = new CabinetBook[room.cabinets().length];
    for (int i = 0; i < cabinets.length; i++) {
      cabinets[i] = new CabinetBook();
    }
    frames = new FrameBook[room.frames().length];
    for (int i = 0; i < frames.length; i++) {
      frames[i] = new FrameBook(room.frames()[i]);
    }
    mixers = new MixerBook(problem.inkRoom());
    int presses = problem.presses().length;
    pressFree = new int[presses];
    pressLast = new int[presses];
    position = new int[presses];
    lotFree = new int[problem.lots()];
    lotStage = new int[problem.lots()];
    orderEnd = new int[problem.orders().length];
    int sets = problem.sets().length;
    setReady = new int[sets];
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
    for (int i = 0; i < setReady.length; i++) {
      setReady[i] = problem.sets()[i].readyAt();
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
      places[busy.kind()].block(busy.lane(), busy.from(), busy.to());
    }
    for (TakenOver.CabinetLoad load : before.loads()) {
      cabinets[load.cabinet()].block(load.from(), load.to(), load.stage(), load.frames());
    }
    for (int mesh = 0; mesh < before.frames().length; mesh++) {
      frames[mesh].begin(before.frames()[mesh]);
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
    int slot = batch.ink() * BATCHES_PER_INK;
    for (int i = slot + 1; i < (batch.ink() + 1) * BATCHES_PER_INK; i++) {
      slot = batchUseBy[i] < batchUseBy[slot] ? i : slot;
    }
    int day = problem.dayStart().length - 1;
    while (day > 0 && problem.dayStart()[day] > batch.done()) {
      day--;
    }
    batchReady[slot] = batch.ready();
    batchUseBy[slot] = batch.useBy();
    batchRoomG[slot] = batch.roomG();
    batchDay[slot] = batch.stock() ? ANY_DAY : day;
    batchId[slot] = batches;
    batches++;
  }

  void copyFrom(ShopState other) {
    for (int i = 0; i < belts.length; i++) {
      belts[i].copyFrom(other.belts[i]);
    }
    for (int i = 0; i < places.length; i++) {
      places[i].copyFrom(other.places[i]);
    }
    for (int i = 0; i < cabinets.length; i++) {
      cabinets[i].copyFrom(other.cabinets[i]);
    }
    for (int i = 0; i < frames.length; i++) {
      frames[i].copyFrom(other.frames[i]);
    }
    mixers.copyFrom(other.mixers);
    copy(other.pressFree, pressFree);
    copy(other.pressLast, pressLast);
    copy(other.position, position);
    copy(other.lotFree, lotFree);
    copy(other.lotStage, lotStage);
    copy(other.orderEnd, orderEnd);
    copy(other.setReady, setReady);
    copy(other.setFree, setFree);
    copy(other.setLeft, setLeft);
    copy(other.setPress, setPress);
    for (int i = 0; i < batchColumns.length; i++) {
      copy(other.batchColumns[i], batchColumns[i]);
    }
    copy(other.inkDay, inkDay);
    System.arraycopy(other.inkLightness, 0, inkLightness, 0, inkLightness.length);
    batches = other.batches;
    unplaced = other.unplaced;
    weightedLateMinutes = other.weightedLateMinutes;
    lastOff = other.lastOff;
    System.arraycopy(other.costMilli, 0, costMilli, 0, costMilli.length);
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

  Outcome outcome() {
    long sum = 0;
    for (CostKind kind : CostKind.values()) {
      sum += cost(kind);
    }
    return new Outcome(unplaced, weightedLateMinutes, sum);
  }
}
