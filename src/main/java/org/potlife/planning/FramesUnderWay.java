package org.potlife.planning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.potlife.screen.FrameStock;
import org.potlife.screen.KeptStencil;
import org.potlife.shop.Shop;

/**
 * Who holds which frames when the plan begins, and until when (R8). Kept stencils hold theirs for
 * good, sets under way until their last run is done.
 *
 * <p>A frozen run may count on frames that another set gives back. That set is closed: no further
 * run may keep it from being given back.
 */
final class FramesUnderWay {

  /**
   * A frame that is taken, or will be.
   *
   * @param mesh index of the stock
   * @param from when it is taken, s
   * @param set index of the screen set, or -1 if no run of the plan uses it
   * @param back when it can be used again if the set takes no further run, s
   * @param more whether further runs may use the set
   */
  record Held(int mesh, int from, int set, int back, boolean more) {}

  private static final int LONG_AGO = Integer.MIN_VALUE / 2;

  private final Shop shop;
  private final ScreenSets sets;
  private final Set<Integer> closed = new HashSet<>();
  private final List<List<Integer>> freeAt = new ArrayList<>();

  FramesUnderWay(Shop shop, ScreenSets sets, List<Held> held) {
    this.shop = shop;
    this.sets = sets;
    List<Held> inOrder = new ArrayList<>(held);
    inOrder.sort(Comparator.comparingInt(Held::from));
    List<Held> missing = handOut(inOrder);
    while (missing.stream().anyMatch(one -> close(inOrder, one))) {
      missing = handOut(inOrder);
    }
  }

  /** Hands the frames out in order of time; returns those that find none. */
  private List<Held> handOut(List<Held> held) {
    freeAt.clear();
    for (FrameStock stock : shop.screenRoom().frames()) {
      freeAt.add(new ArrayList<>(Collections.nCopies(stock.count(), LONG_AGO)));
    }
    for (KeptStencil stencil : shop.screenRoom().kept()) {
      int mesh = sets.mesh(stencil.meshPerCm(), stencil.threadUm());
      if (mesh >= 0 && !freeAt.get(mesh).isEmpty()) {
        freeAt.get(mesh).remove(0);
      }
    }
    List<Held> missing = new ArrayList<>();
    int[] owed = new int[freeAt.size()];
    for (Held one : held) {
      List<Integer> frames = freeAt.get(one.mesh());
      Integer best = null;
      for (Integer free : frames) {
        if (free <= one.from() && (best == null || free > best)) {
          best = free;
        }
      }
      if (best == null) {
        missing.add(one);
      }
      // where a run holds its screens longer than planned, more are under way than there are frames
      boolean taken = best != null || !frames.isEmpty();
      if (taken) {
        frames.remove(best == null ? frames.stream().min(Integer::compare).get() : best);
      }
      owed[one.mesh()] += taken ? 0 : 1;
      boolean comesBack = !one.more() || closed.contains(one.set());
      if (comesBack && owed[one.mesh()] > 0) {
        owed[one.mesh()]--;
      } else if (comesBack) {
        frames.add(one.back());
      }
    }
    return missing;
  }

  /** Closes a set whose frames are promised to a later one. */
  private boolean close(List<Held> held, Held missing) {
    for (Held one : held) {
      boolean promised = one.mesh() == missing.mesh() && one.back() <= missing.from();
      if (promised && one.more() && closed.add(one.set())) {
        return true;
      }
    }
    return false;
  }

  /** Sets that no further run may use. */
  Set<Integer> closed() {
    return closed;
  }

  /** By mesh, when each frame that is not for good with a set is free, s, ascending. */
  int[][] freeAt() {
    return freeAt.stream()
        .map(frames -> frames.stream().mapToInt(free -> Math.max(0, free)).sorted().toArray())
        .toArray(int[][]::new);
  }
}
