package org.potlife.audit;

import java.util.ArrayList;
import java.util.List;
import org.potlife.ink.InkRoom;

/**
 * One job of one mixer.
 *
 * @param work mixing or activation
 * @param mixer number of the mixer, from 1
 */
record MixerJob(BatchFacts batch, String work, int mixer, Stretch time) {

  /** The jobs that a batch makes. */
  static List<MixerJob> of(BatchFacts batch, InkRoom room) {
    List<MixerJob> jobs = new ArrayList<>();
    int mixer = batch.line().mixer();
    long mixed = batch.mixFrom() + room.mixMinutes() * 60L;
    jobs.add(new MixerJob(batch, "mixing", mixer, new Stretch(batch.mixFrom(), mixed)));
    if (batch.activated()) {
      Stretch time = new Stretch(batch.activateFrom(), batch.activatedAt());
      jobs.add(new MixerJob(batch, "activation", mixer, time));
    }
    return jobs;
  }
}
