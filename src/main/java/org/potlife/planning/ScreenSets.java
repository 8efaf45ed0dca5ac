package org.potlife.planning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.potlife.order.Print;
import org.potlife.screen.FrameStock;
import org.potlife.screen.KeptStencil;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.shop.Shop;
import org.potlife.simulation.ScreenSetSpec;

/**
 * Groups screens into sets, uses kept stencils in the set that comes first (R8), and keeps the sets
 * that the published plan has begun: for the frozen runs on them, and for others as long as their
 * frames are not promised away.
 */
final class ScreenSets {

  private final Shop shop;
  private final List<ScreenSet> list = new ArrayList<>();
  private final Map<List<String>, ScreenSet> begun = new HashMap<>();
  private final Map<Integer, List<ScreenLine>> lines = new HashMap<>();
  private final Map<String, ScreenSet> ofTaken = new HashMap<>();
  private final Map<List<ScreenKey>, ScreenSet> ofMovable = new HashMap<>();
  private final Map<Integer, Integer> movableRuns = new HashMap<>();
  private final Map<ScreenKey, Integer> numbers = new HashMap<>();
  private final Set<String> usedIds = new HashSet<>();
  private final Set<String> takenKept = new HashSet<>();
  private final List<ScreenLine> survivors;
  private final Map<String, Integer> usedSurvivors = new HashMap<>();
  private final ScreenNews news;

  /**
   * @param runs movable runs first, then those taken over
   * @param closed screen ids of begun sets that no further run may use
   */
  ScreenSets(
      Shop shop, Frozen frozen, List<PlannedRun> runs, int movable, Set<List<String>> closed) {
    this.shop = shop;
    news = frozen.news();
    // a name that is reported broken must not come back to life
    usedIds.addAll(news.brokenIds());
    survivors =
        frozen.survivors().stream().filter(line -> !closed.contains(List.of(line.id()))).toList();
    for (PlannedRun run : runs) {
      ScreenKey.of(run.print()).forEach(key -> numbers.putIfAbsent(key, numbers.size()));
    }
    List<List<ScreenLine>> published = frozen.screenSets();
    for (PlannedRun run : runs.subList(movable, runs.size())) {
      List<ScreenKey> keys = ScreenKey.of(run.print());
      published.stream()
          .filter(set -> matches(set, keys) && set.get(0).runs().contains(run.id()))
          .findFirst()
          .ifPresent(set -> ofTaken.put(run.id(), goOn(keys, set)));
    }
    List<PlannedRun> toMove = runs.subList(0, movable);
    for (PlannedRun run : toMove) {
      List<ScreenKey> keys = ScreenKey.of(run.print());
      if (!ofMovable.containsKey(keys)) {
        published.stream()
            .filter(set -> matches(set, keys) && !closed.contains(ids(set)))
            .filter(set -> set.stream().noneMatch(line -> news.isSpent(line.id())))
            .max(
                Comparator.comparing((List<ScreenLine> set) -> isFor(set, toMove))
                    .thenComparing(set -> set.get(0).readyAt().toInstant()))
            .ifPresent(set -> ofMovable.put(keys, goOn(keys, set)));
      }
    }
    for (ScreenLine line : frozen.screens()) {
      // a stencil kept for a set that nobody needs any more is free again
      if (!line.kept()) {
        usedIds.add(line.id());
      } else if (isAdopted(line)) {
        takenKept.add(line.id());
      }
    }
    for (int i = 0; i < runs.size(); i++) {
      List<ScreenKey> keys = ScreenKey.of(runs.get(i).print());
      if (i < movable) {
        ScreenSet set = ofMovable.computeIfAbsent(keys, this::makeSet);
        movableRuns.merge(set.index(), 1, Integer::sum);
      } else {
        ofTaken.computeIfAbsent(runs.get(i).id(), id -> makeSet(keys));
      }
    }
  }

  private static List<String> ids(List<ScreenLine> set) {
    return set.stream().map(ScreenLine::id).toList();
  }

  private static boolean isFor(List<ScreenLine> set, List<PlannedRun> runs) {
    return runs.stream().anyMatch(run -> set.get(0).runs().contains(run.id()));
  }

  private ScreenSet goOn(List<ScreenKey> keys, List<ScreenLine> set) {
    return begun.computeIfAbsent(
        ids(set),
        ids -> {
          lines.put(list.size(), set);
          return add(
              keys,
              ids,
              set.stream().map(ScreenLine::kept).toList(),
              Collections.nCopies(keys.size(), false));
        });
  }

  private ScreenSet add(
      List<ScreenKey> keys, List<String> ids, List<Boolean> kept, List<Boolean> held) {
    list.add(new ScreenSet(list.size(), keys, ids, kept, held));
    return list.get(list.size() - 1);
  }

  private ScreenSet makeSet(List<ScreenKey> keys) {
    List<String> ids = new ArrayList<>();
    List<Boolean> kept = new ArrayList<>();
    List<Boolean> held = new ArrayList<>();
    for (int station = 0; station < keys.size(); station++) {
      ScreenKey key = keys.get(station);
      String stencil = keptStencil(key);
      Optional<ScreenLine> survivor = stencil == null ? survivor(key) : Optional.empty();
      survivor.ifPresent(line -> usedSurvivors.put(line.id(), list.size()));
      kept.add(stencil != null);
      held.add(survivor.isPresent());
      ids.add(
          stencil != null
              ? stencil
              : survivor.map(ScreenLine::id).orElseGet(() -> newId(key, ids.size())));
    }
    return add(keys, ids, kept, held);
  }

  private Optional<ScreenLine> survivor(ScreenKey key) {
    return survivors.stream()
        .filter(line -> matches(line, key) && !usedSurvivors.containsKey(line.id()))
        .findFirst();
  }

  /** The new set that a survivor of a broken one serves in. */
  Optional<ScreenSet> findSetOfSurvivor(ScreenLine line) {
    return Optional.ofNullable(usedSurvivors.get(line.id())).map(list::get);
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
    return usedSurvivors.containsKey(line.id())
        || lines.values().stream().anyMatch(set -> set.contains(line));
  }

  private static boolean matches(ScreenLine line, ScreenKey key) {
    return line.design().equals(key.design())
        && line.ink().equals(key.ink())
        && line.meshPerCm() == key.meshPerCm()
        && line.threadUm() == key.threadUm();
  }

  private String keptStencil(ScreenKey key) {
    for (KeptStencil stencil : shop.screenRoom().kept()) {
      ScreenKey kept =
          new ScreenKey(stencil.design(), stencil.ink(), stencil.meshPerCm(), stencil.threadUm());
      if (kept.equals(key) && takenKept.add(stencil.screen())) {
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

  /** The set of a run; a frozen run keeps the one that it was published with. */
  int indexOf(PlannedRun run) {
    ScreenSet taken = ofTaken.get(run.id());
    return (taken != null ? taken : ofMovable.get(ScreenKey.of(run.print()))).index();
  }

  /** The set that further runs with these screens use, if there are such runs. */
  Optional<ScreenSet> findMovable(List<ScreenKey> keys) {
    return Optional.ofNullable(ofMovable.get(keys));
  }

  int[] screenNumbers(Print print) {
    return ScreenKey.of(print).stream().mapToInt(numbers::get).toArray();
  }

  List<ScreenSet> list() {
    return List.copyOf(list);
  }

  /** Lines of the published plan for a set that is begun; empty if it is made anew. */
  List<ScreenLine> begunLines(ScreenSet set) {
    return lines.getOrDefault(set.index(), List.of());
  }

  int movableRuns(ScreenSet set) {
    return movableRuns.getOrDefault(set.index(), 0);
  }

  ScreenSetSpec[] specs(Horizon horizon) {
    return list.stream().map(set -> spec(set, horizon)).toArray(ScreenSetSpec[]::new);
  }

  private ScreenSetSpec spec(ScreenSet set, Horizon horizon) {
    List<Integer> taken = new ArrayList<>();
    List<Integer> held = new ArrayList<>();
    ScreenNews.Resume resume = null;
    for (int station = 0; station < set.keys().size(); station++) {
      ScreenKey key = set.keys().get(station);
      int mesh = mesh(key.meshPerCm(), key.threadUm());
      if (set.isMade(station)) {
        taken.add(mesh);
      } else if (!set.kept().get(station)) {
        held.add(mesh);
      }
      ScreenNews.Resume own = news.resume(set.ids().get(station));
      resume = own != null ? own : resume;
    }
    List<ScreenLine> begunLines = begunLines(set);
    if (!begunLines.isEmpty() && resume != null) {
      return new ScreenSetSpec(
          set.keys().size(),
          taken.size(),
          new int[0],
          ints(taken),
          -1,
          movableRuns(set),
          resume.stage(),
          horizon.secondsUp(resume.notBefore()));
    }
    int readyAt = taken.isEmpty() ? 0 : -1;
    for (ScreenLine line : begunLines) {
      readyAt = Math.max(Math.max(readyAt, 0), horizon.secondsUp(line.readyAt()));
    }
    int heldReady =
        survivors.stream()
            .filter(line -> set.ids().contains(line.id()))
            .mapToInt(line -> horizon.secondsUp(line.readyAt()))
            .max()
            .orElse(0);
    return new ScreenSetSpec(
        set.keys().size(),
        taken.size(),
        ints(taken),
        ints(held),
        taken.isEmpty() ? Math.max(readyAt, heldReady) : readyAt,
        movableRuns(set),
        0,
        Math.max(0, heldReady));
  }

  private static int[] ints(List<Integer> list) {
    return list.stream().mapToInt(Integer::intValue).toArray();
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
