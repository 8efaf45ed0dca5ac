package org.potlife.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.potlife.ink.StockInk;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.UseLine;
import org.potlife.shop.Shop;
import org.potlife.simulation.StaffedTime;
import org.potlife.simulation.TakenOver.Busy;
import org.potlife.simulation.TakenOver.LiveBatch;

/** The ink that is there when the plan begins, as bookings of the engine (R13, R22). */
final class InkInHand {

  private final Shop shop;
  private final Horizon horizon;
  private final Frozen frozen;
  private final BatchNews news;
  private final List<StockInk> stock;

  InkInHand(Shop shop, Horizon horizon, Frozen frozen, BatchNews news, List<StockInk> stock) {
    this.shop = shop;
    this.horizon = horizon;
    this.frozen = frozen;
    this.news = news;
    this.stock = stock;
  }

  /** When the mixers are busy with batches that are taken over. */
  List<Busy> mixing() {
    List<Busy> busy = new ArrayList<>();
    int mixS = shop.inkRoom().mixMinutes() * 60;
    for (BatchLine batch : frozen.batches()) {
      int lane = batch.mixer() - 1;
      // what is marked is done
      if (lane < shop.inkRoom().mixers() && !batch.fromStock() && !news.isMarked(batch.id())) {
        int mixFrom = horizon.seconds(batch.mixFrom());
        busy.add(new Busy(0, lane, mixFrom, mixFrom + mixS));
      }
      if (lane < shop.inkRoom().mixers() && !batch.fromStock()) {
        busy.add(
            new Busy(
                0,
                lane,
                horizon.seconds(batch.activateFrom()),
                horizon.seconds(batch.activatedAt())));
      }
    }
    return busy.stream().filter(job -> job.to() > 0 && job.to() > job.from()).toList();
  }

  /** What frozen runs leave of a batch serves others within its clock; then what is in stock. */
  List<LiveBatch> live() {
    List<LiveBatch> live = new ArrayList<>();
    for (BatchLine batch : frozen.batches()) {
      if (ink(batch.ink()) >= 0) {
        live.add(batch.fromStock() ? ofStock(batch) : ofBatch(batch));
      }
    }
    for (StockInk ink : stock) {
      live.add(onTheShelf(ink.ink(), ink.massG()));
    }
    return live;
  }

  private int ink(String id) {
    return shop.inks().indexOf(shop.findInk(id).orElse(null));
  }

  private LiveBatch ofBatch(BatchLine batch) {
    int left = batch.massG() - batch.reserveG() - drawnByFrozen(batch, false);
    int byTheBooks =
        news.leftG(batch.id())
            .map(g -> g - batch.agentG() - batch.reserveG() - drawnByFrozen(batch, true))
            .orElse(left);
    return new LiveBatch(
        ink(batch.ink()),
        horizon.seconds(batch.mixFrom()),
        horizon.seconds(batch.activatedAt()),
        horizon.secondsUp(batch.readyAt()),
        batch.useBy() == null ? StaffedTime.NEVER : horizon.seconds(batch.useBy()),
        news.isGone(batch.id()) ? 0 : Math.max(0, Math.min(left, byTheBooks)),
        batch.mixer() - 1,
        false);
  }

  private LiveBatch ofStock(BatchLine container) {
    int left =
        Math.min(
            container.massG() - drawnByFrozen(container, false),
            news.inStockG(container.id()) - drawnByFrozen(container, true));
    return onTheShelf(container.ink(), Math.max(0, left));
  }

  private LiveBatch onTheShelf(String ink, int massG) {
    return new LiveBatch(ink(ink), 0, 0, 0, StaffedTime.NEVER, massG, 0, true);
  }

  private int drawnByFrozen(BatchLine batch, boolean stillToCome) {
    Set<String> runs = frozen.runIds();
    return batch.uses().stream()
        .filter(use -> runs.contains(use.run()))
        .filter(use -> !stillToCome || horizon.seconds(use.to()) > 0)
        .mapToInt(InkInHand::grams)
        .sum();
  }

  private static int grams(UseLine use) {
    return use.printG() + use.chargeG();
  }
}
