package org.potlife.room.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.potlife.ink.LearnedGrams;

/** A row of the table ink_learned. */
@Entity
@Table(name = "ink_learned")
class InkLearnedEntity {

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  Long id;

  String plant;
  String design;
  String position;
  String ink;

  @Column(name = "mesh_per_cm")
  double meshPerCm;

  @Column(name = "thread_um")
  double threadUm;

  @Column(name = "width_mm")
  int widthMm;

  @Column(name = "height_mm")
  int heightMm;

  @Column(name = "coverage_percent")
  double coveragePercent;

  int passes;
  double grams;
  int observations;

  @Column(name = "changed_at")
  Instant changedAt;

  LearnedGrams learned() {
    return new LearnedGrams(
        design,
        position,
        ink,
        meshPerCm,
        threadUm,
        widthMm,
        heightMm,
        coveragePercent,
        passes,
        grams,
        observations);
  }

  void learn(LearnedGrams learned, Instant at) {
    design = learned.design();
    position = learned.position();
    ink = learned.ink();
    meshPerCm = learned.meshPerCm();
    threadUm = learned.threadUm();
    widthMm = learned.widthMm();
    heightMm = learned.heightMm();
    coveragePercent = learned.coveragePercent();
    passes = learned.passes();
    grams = learned.grams();
    observations = learned.observations();
    changedAt = at;
  }
}
