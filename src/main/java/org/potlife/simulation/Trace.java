package org.potlife.simulation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What happened in one simulation, in whole seconds and indices; written for the plan sheet. */
public final class Trace {

  /** A placed run. Waiting begins at {@code pressFree}; the waits lead up to {@code start}. */
  public record Placed(
      int run,
      int press,
      int pressFree,
      int start,
      int firstPiece,
      int print,
      int end,
      int off,
      int setUpS,
      int mounted,
      List<Rate> rates,
      List<Wait> waits) {}

  /** A stretch of printing at one rate, pieces/h. */
  public record Rate(int from, int to, int perHour) {}

  /** A stretch of waiting. */
  public record Wait(int from, int to, Cause cause) {}

  /** A run without a place. */
  public record Refused(int run, int press, Refusal refusal) {}

  /** A batch; {@code useBy} is {@link StaffedTime#NEVER} without agent. */
  public record Batch(
      int id, int ink, int mixFrom, int done, int ready, int useBy, int mixer, List<Use> uses) {}

  /** What a run draws from a batch, g. */
  public record Use(int run, int from, int to, int printG, int chargeG) {}

  /**
   * Hands-on work on a set, one screen after the other.
   *
   * @param lane place of its kind, from 0
   * @param startWork start in staffed seconds
   * @param eachS staffed seconds per screen
   * @param arrivedAt when the set came to the place, s
   */
  public record Hands(
      ScreenRoomSpec.HandStage stage, int lane, int startWork, int eachS, int arrivedAt) {}

  /** Drying of a set in a cabinet. */
  public record Drying(ScreenRoomSpec.DryStage stage, int cabinet, int from, int dryAt) {}

  private final List<Placed> placed = new ArrayList<>();
  private final List<Refused> refused = new ArrayList<>();
  private final List<Batch> batches = new ArrayList<>();
  private final Map<Integer, List<Object>> steps = new HashMap<>();
  private List<Wait> waits = new ArrayList<>();

  /** Batches that are taken over come first, so that ids are places in the list. */
  void begin(TakenOver takenOver) {
    for (TakenOver.LiveBatch live : takenOver.batches()) {
      batch(
          batches.size(),
          live.ink(),
          live.mixFrom(),
          live.done(),
          live.ready(),
          live.useBy(),
          live.mixer());
    }
  }

  void waitUntil(int from, int to, Cause cause) {
    int last = waits.size() - 1;
    if (last >= 0 && waits.get(last).cause() == cause) {
      waits.set(last, new Wait(waits.get(last).from(), to, cause));
    } else {
      waits.add(new Wait(from, to, cause));
    }
  }

  void place(
      int run,
      int press,
      int pressFree,
      int start,
      int firstPiece,
      int print,
      int end,
      int off,
      int setUpS,
      int mounted,
      BeltWalk walk) {
    List<Rate> rates = new ArrayList<>();
    for (int i = 0; i < walk.count(); i++) {
      rates.add(new Rate(walk.from(i), walk.to(i), walk.rate(i)));
    }
    placed.add(
        new Placed(
            run,
            press,
            pressFree,
            start,
            firstPiece,
            print,
            end,
            off,
            setUpS,
            mounted,
            rates,
            waits));
    waits = new ArrayList<>();
  }

  void refuse(int run, int press, Refusal refusal) {
    refused.add(new Refused(run, press, refusal));
    waits = new ArrayList<>();
  }

  void batch(int id, int ink, int mixFrom, int done, int ready, int useBy, int mixer) {
    batches.add(new Batch(id, ink, mixFrom, done, ready, useBy, mixer, new ArrayList<>()));
  }

  void use(int batch, int run, int from, int to, int printG, int chargeG) {
    batches.get(batch).uses().add(new Use(run, from, to, printG, chargeG));
  }

  /** Takes back what a run that did not fit has drawn. */
  void dropDraws(int firstNewBatch, int run) {
    while (batches.size() > firstNewBatch) {
      batches.remove(batches.size() - 1);
    }
    for (Batch batch : batches) {
      batch.uses().removeIf(use -> use.run() == run);
    }
  }

  void hands(
      int set, ScreenRoomSpec.HandStage stage, int lane, int startWork, int eachS, int arrivedAt) {
    steps
        .computeIfAbsent(set, key -> new ArrayList<>())
        .add(new Hands(stage, lane, startWork, eachS, arrivedAt));
  }

  void drying(int set, ScreenRoomSpec.DryStage stage, int cabinet, int from, int dryAt) {
    steps
        .computeIfAbsent(set, key -> new ArrayList<>())
        .add(new Drying(stage, cabinet, from, dryAt));
  }

  /** Takes back the last steps of a set. */
  void dropSteps(int set, int number) {
    List<Object> recorded = steps.get(set);
    recorded.subList(recorded.size() - number, recorded.size()).clear();
  }

  /** Placed runs in order of placement. */
  public List<Placed> placed() {
    return placed;
  }

  public List<Refused> refused() {
    return refused;
  }

  public List<Batch> batches() {
    return batches;
  }

  /** Steps of a set in order: {@link Hands} and {@link Drying}. */
  public List<Object> steps(int set) {
    return steps.getOrDefault(set, List.of());
  }
}
