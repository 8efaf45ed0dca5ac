package org.potlife.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.potlife.order.Print;
import org.potlife.screen.FrameStock;
import org.potlife.screen.KeptStencil;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.shop.Shop;
import org.potlife.simulation.ScreenSetSpec;
import org.potlife.simulation.StaffedTime;

/**
 * Groups screens into sets, uses kept stencils in the set that comes first (R8), and keeps the
 * screens that the published plan has begun.
 */
final class ScreenSets {

  private final Shop shop;
  private final Frozen frozen;
  private final Map<List<ScreenKey>, ScreenSet> sets = new LinkedHashMap<>();
  private final Map<List<ScreenKey>, List<String>> runIds = new HashMap<>();
  private final Map<List<ScreenKey>, Integer> movableRuns = new HashMap<>();
  private final Map<List<ScreenKey>, List<ScreenLine>> begun = new HashMap<>();
  private final Map<ScreenKey, Integer> numbers = new HashMap<>();
  private final Set<String> usedIds = new HashSet<>();
  private final Set<Integer> closed = new HashSet<>();

  ScreenSets(Shop shop, Frozen frozen, List<PlannedRun> runs, int movable) {
    this.shop = shop;
    this.frozen = frozen;
    for (int i = 0; i < runs.size(); i++) {
      List<ScreenKey> keys = ScreenKey.of(runs.get(i).print());
      keys.forEach(key -> numbers.putIfAbsent(key, numbers.size()));
      runIds.computeIfAbsent(keys, key -> new ArrayList<>()).add(runs.get(i).id());
      movableRuns.merge(keys, i < movable ? 1 : 0, Integer::sum);
    }
    runIds.keySet().forEach(this::adopt);
    Set<String> takenKept = new HashSet<>();
    for (ScreenLine line : frozen.screens()) {
      // a stencil kept for a set that nobody needs any more is free again
      if (!line.kept()) {
        usedIds.add(line.id());
      } else if (isAdopted(line)) {
        takenKept.add(line.id());
      }
    }
    for (PlannedRun run : runs) {
      List<ScreenKey> keys = ScreenKey.of(run.print());
      if (!sets.containsKey(keys)) {
        sets.put(keys, makeSet(keys, takenKept));
      }
    }
  }

  /** Goes on with screens in process: those of these runs, else others that are the same. */
  private void adopt(List<ScreenKey> keys) {
    List<String> ids = runIds.get(keys);
    List<ScreenLine> best = List.of();
    for (List<ScreenLine> set : frozen.screenSets()) {
      boolean own = set.get(0).runs().stream().anyMatch(ids::contains);
      if (matches(set, keys) && (best.isEmpty() || own)) {
        best = set;
      }
    }
    if (!best.isEmpty()) {
      begun.put(keys, best);
    }
  }

  private static boolean matches(List<ScreenLine> set, List<ScreenKey> keys) {
    boolean same = set.size() == keys.size();
    for (int i = 0; same && i < keys.size(); i++) {
      same = set.get(i).station() == i + 1 && matches(set.get(i), keys.get(i));
    }
    return same;
  }

  /** Whether a screen in process is used by this plan. */
  boolean isAdopted(ScreenLine line) {
    return begun.values().stream().anyMatch(set -> set.contains(line));
  }

  private ScreenSet makeSet(List<ScreenKey> keys, Set<String> takenKept) {
    List<ScreenLine> lines = begun.get(keys);
    if (lines != null) {
      return new ScreenSet(
          sets.size(),
          keys,
          lines.stream().map(ScreenLine::id).toList(),
          lines.stream().map(ScreenLine::kept).toList());
    }
    List<String> ids = new ArrayList<>();
    List<Boolean> kept = new ArrayList<>();
    for (int station = 0; station < keys.size(); station++) {
      String stencil = keptStencil(keys.get(station), takenKept);
      kept.add(stencil != null);
      ids.add(stencil != null ? stencil : newId(keys.get(station), station));
    }
    return new ScreenSet(sets.size(), keys, ids, kept);
  }

  private static boolean matches(ScreenLine line, ScreenKey key) {
    return line.design().equals(key.design())
        && line.ink().equals(key.ink())
        && line.meshPerCm() == key.meshPerCm()
        && line.threadUm() == key.threadUm();
  }

  private String keptStencil(ScreenKey key, Set<String> taken) {
    for (KeptStencil stencil : shop.screenRoom().kept()) {
      ScreenKey kept =
          new ScreenKey(stencil.design(), stencil.ink(), stencil.meshPerCm(), stencil.threadUm());
      if (kept.equals(key) && taken.add(stencil.screen())) {
        usedIds.add(stencil.screen());
        return stencil.screen();
      }
    }
    return null;
  }

  private String newId(ScreenKey key, int station) {
    String name = key.design() + "-" + (station + 1);
    String id = name;
    for (int i = 2; !usedIds.add(id); i++) {
      id = name + "." + i;
    }
    return id;
  }

  int indexOf(Print print) {
    return sets.get(ScreenKey.of(print)).index();
  }

  int[] screenNumbers(Print print) {
    return ScreenKey.of(print).stream().mapToInt(numbers::get).toArray();
  }

  List<ScreenSet> list() {
    return List.copyOf(sets.values());
  }

  /** Lines of the published plan for a set that is begun; empty if it is made anew. */
  List<ScreenLine> begunLines(ScreenSet set) {
    return begun.getOrDefault(set.keys(), List.of());
  }

  int movableRuns(ScreenSet set) {
    return movableRuns.get(set.keys());
  }

  ScreenSetSpec[] specs(Horizon horizon) {
    return sets.values().stream().map(set -> spec(set, horizon)).toArray(ScreenSetSpec[]::new);
  }

  /** No further run may use these sets: their frames are promised to others. */
  void close(Set<Integer> indices) {
    closed.addAll(indices);
  }

  private ScreenSetSpec spec(ScreenSet set, Horizon horizon) {
    if (closed.contains(set.index())) {
      int[] nothing = {};
      int screens = set.keys().size();
      return new ScreenSetSpec(screens, 0, nothing, StaffedTime.NEVER, movableRuns(set));
    }
    List<Integer> meshes = new ArrayList<>();
    for (int station = 0; station < set.keys().size(); station++) {
      if (!set.kept().get(station)) {
        meshes.add(mesh(set.keys().get(station).meshPerCm(), set.keys().get(station).threadUm()));
      }
    }
    int readyAt = meshes.isEmpty() ? 0 : -1;
    for (ScreenLine line : begunLines(set)) {
      readyAt = Math.max(Math.max(readyAt, 0), horizon.secondsUp(line.readyAt()));
    }
    return new ScreenSetSpec(
        set.keys().size(),
        meshes.size(),
        meshes.stream().mapToInt(Integer::intValue).toArray(),
        readyAt,
        movableRuns(set));
  }

  /** Index of a mesh among the frame stocks; -1 if the plant has none. */
  int mesh(double meshPerCm, double threadUm) {
    List<FrameStock> stocks = shop.screenRoom().frames();
    for (int i = 0; i < stocks.size(); i++) {
      if (stocks.get(i).meshPerCm() == meshPerCm && stocks.get(i).threadUm() == threadUm) {
        return i;
      }
    }
    return -1;
  }
}
