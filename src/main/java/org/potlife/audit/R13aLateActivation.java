package org.potlife.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * R13a: a batch is activated as late as its first use and the mixers allow: there is no free time
 * in which it could be activated a minute or more later and still be ready for its first use.
 *
 * <p>Jobs that follow one another on a mixer for the same first use (the mixing of a batch and its
 * activation, several batches of one run) are one block and are moved as one, with every job inside
 * one staffed stretch. Batches that serve a frozen run, or are begun, stay as published.
 */
final class R13aLateActivation implements Rule {

  @Override
  public String number() {
    return "R13a";
  }

  @Override
  public String title() {
    return "Late activation";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    List<MixerJob> jobs =
        evidence.batches().stream()
            .filter(batch -> !batch.fromStock())
            .flatMap(batch -> MixerJob.of(batch, evidence.shop().inkRoom()).stream())
            .toList();
    for (BatchFacts batch : evidence.batches()) {
      if (!batch.activated() || batch.uses().isEmpty() || evidence.isTakenOver(batch)) {
        continue;
      }
      long firstUse = firstUse(batch);
      List<MixerJob> block = block(batch, jobs, evidence.inkRoom());
      long slack =
          block.stream().mapToLong(job -> firstUse - job.batch().readyAt()).min().orElse(0);
      long later = latestMove(block, slack, jobs, evidence);
      notes.check(
          later < Tolerance.LATE_ACTIVATION_S,
          batch.id(),
          "is activated %s for its first use %s, the mixers were free to do it %d min later",
          evidence.at(batch.activatedAt()),
          evidence.at(firstUse),
          later / 60);
    }
  }

  private static long firstUse(BatchFacts batch) {
    return batch.uses().stream().mapToLong(BatchFacts.Use::from).min().orElse(0);
  }

  private static List<MixerJob> block(BatchFacts batch, List<MixerJob> jobs, Staffed staffed) {
    List<MixerJob> alike =
        jobs.stream()
            .filter(job -> job.mixer() == batch.line().mixer())
            .filter(job -> !job.batch().uses().isEmpty())
            .filter(job -> firstUse(job.batch()) == firstUse(batch))
            .sorted(Comparator.comparingLong(job -> job.time().from()))
            .toList();
    List<MixerJob> block = new ArrayList<>();
    boolean found = false;
    for (MixerJob job : alike) {
      if (!block.isEmpty()) {
        long end = block.get(block.size() - 1).time().to();
        boolean follows = staffed.seconds(end, job.time().from()) <= Tolerance.SECONDS;
        if (!follows && found) {
          break;
        }
        if (!follows) {
          block.clear();
        }
      }
      block.add(job);
      found |= job.batch().equals(batch) && job.work().equals("activation");
    }
    return block;
  }

  /** How many seconds later the block could be done, 0 if not at all. */
  private static long latestMove(
      List<MixerJob> block, long slack, List<MixerJob> jobs, Evidence evidence) {
    if (slack < Tolerance.LATE_ACTIVATION_S) {
      return 0;
    }
    List<MixerJob> others = jobs.stream().filter(job -> !block.contains(job)).toList();
    TreeSet<Long> moves = new TreeSet<>(List.of(slack, Tolerance.LATE_ACTIVATION_S));
    for (MixerJob job : block) {
      for (Stretch stretch : evidence.inkRoom().stretches()) {
        moves.add(stretch.from() - job.time().from());
        moves.add(stretch.to() - job.time().to());
      }
      for (MixerJob other : others) {
        moves.add(other.time().from() - job.time().to());
        moves.add(other.time().to() - job.time().from());
      }
    }
    // the earliest and latest ends of all free times are among these
    for (long move : moves.subSet(Tolerance.LATE_ACTIVATION_S, true, slack, true).descendingSet()) {
      for (int mixer = 1; mixer <= evidence.shop().inkRoom().mixers(); mixer++) {
        if (fits(block, move, mixer, others, evidence.inkRoom())) {
          return move;
        }
      }
    }
    return 0;
  }

  private static boolean fits(
      List<MixerJob> block, long move, int mixer, List<MixerJob> others, Staffed staffed) {
    for (MixerJob job : block) {
      Stretch time = job.time().later(move);
      if (!staffed.inOneStretch(time.from(), time.to())) {
        return false;
      }
      for (MixerJob other : others) {
        if (other.mixer() == mixer && other.time().overlaps(time)) {
          return false;
        }
      }
    }
    return true;
  }
}
