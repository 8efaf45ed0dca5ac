package org.potlife.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.potlife.ink.InkRoom;

/**
 * R12: every job of the ink room is as long as it takes, lies within one staffed stretch and has a
 * mixer to itself; a batch fits a container.
 */
final class R12InkRoomCapacity implements Rule {

  @Override
  public String number() {
    return "R12";
  }

  @Override
  public String title() {
    return "Ink room";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    InkRoom room = evidence.shop().inkRoom();
    List<MixerJob> jobs = new ArrayList<>();
    for (BatchFacts batch : evidence.batches()) {
      if (batch.fromStock() || evidence.ink().isMarked(batch.id())) {
        // nobody makes it any more
        continue;
      }
      notes.check(
          batch.line().massG() <= room.containerG(),
          batch.id(),
          "holds %d g, a container takes %d g",
          batch.line().massG(),
          room.containerG());
      notes.check(
          batch.line().mixer() >= 1 && batch.line().mixer() <= room.mixers(),
          batch.id(),
          "is made on mixer %d of %d",
          batch.line().mixer(),
          room.mixers());
      long mixed = batch.mixFrom() + room.mixMinutes() * 60L;
      if (batch.activated()) {
        notes.check(
            batch.activateFrom() >= mixed,
            batch.id(),
            "is activated from %s, it is mixed only %s",
            evidence.at(batch.activateFrom()),
            evidence.at(mixed));
        notes.check(
            Math.abs(batch.activatedAt() - batch.activateFrom() - room.activateMinutes() * 60L)
                <= Tolerance.SECONDS,
            batch.id(),
            "is activated from %s to %s, that takes %d min",
            evidence.at(batch.activateFrom()),
            evidence.at(batch.activatedAt()),
            room.activateMinutes());
      } else {
        notes.check(
            Math.abs(batch.activatedAt() - mixed) <= Tolerance.SECONDS,
            batch.id(),
            "is mixed from %s to %s, that takes %d min",
            evidence.at(batch.mixFrom()),
            evidence.at(batch.activatedAt()),
            room.mixMinutes());
      }
      jobs.addAll(MixerJob.of(batch, room));
    }
    jobs.sort(Comparator.comparingLong(job -> job.time().from()));
    for (int i = 0; i < jobs.size(); i++) {
      MixerJob job = jobs.get(i);
      notes.check(
          evidence.inkRoom().inOneStretch(job.time().from(), job.time().to()),
          job.batch().id(),
          "%s from %s to %s is not within one staffed stretch of the ink room",
          job.work(),
          evidence.at(job.time().from()),
          evidence.at(job.time().to()));
      for (int k = i + 1; k < jobs.size() && jobs.get(k).time().from() < job.time().to(); k++) {
        MixerJob other = jobs.get(k);
        notes.check(
            other.mixer() != job.mixer() || !other.time().overlaps(job.time()),
            other.batch().id(),
            "%s starts %s, mixer %d is busy with batch %s until %s",
            other.work(),
            evidence.at(other.time().from()),
            job.mixer(),
            job.batch().id(),
            evidence.at(job.time().to()));
      }
    }
  }
}
