package org.potlife.room.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.potlife.ink.InkLedger;

/** A row of the table ink_container. */
@Entity
@Table(name = "ink_container")
class InkContainerEntity {

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  Long id;

  String plant;
  String name;
  String ink;
  boolean stock;

  @Column(name = "light_only")
  boolean lightOnly;

  String origin;
  Instant since;

  @Column(name = "mixed_at")
  Instant mixedAt;

  @Column(name = "activated_at")
  Instant activatedAt;

  @Column(name = "use_by")
  Instant useBy;

  @Column(name = "gone_at")
  Instant goneAt;

  @Column(name = "planned_g")
  int plannedG;

  @Column(name = "mixed_g")
  int mixedG;

  @Column(name = "agent_g")
  int agentG;

  @Column(name = "found_g")
  int foundG;

  @Column(name = "printed_g")
  int printedG;

  @Column(name = "screens_g")
  int screensG;

  @Column(name = "returned_g")
  int returnedG;

  @Column(name = "discarded_g")
  int discardedG;

  @Column(name = "lost_g")
  int lostG;

  InkLedger grams() {
    return new InkLedger(
        plannedG, mixedG, agentG, foundG, printedG, screensG, returnedG, discardedG, lostG);
  }

  void book(InkLedger grams) {
    plannedG = grams.plannedG();
    mixedG = grams.mixedG();
    agentG = grams.agentG();
    foundG = grams.foundG();
    printedG = grams.printedG();
    screensG = grams.screensG();
    returnedG = grams.returnedG();
    discardedG = grams.discardedG();
    lostG = grams.lostG();
  }
}
