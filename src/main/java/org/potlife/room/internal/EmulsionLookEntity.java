package org.potlife.room.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.potlife.screen.Calibration.Look;

/** A row of the table emulsion_look. */
@Entity
@Table(name = "emulsion_look")
class EmulsionLookEntity {

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  Long id;

  String plant;
  String cabinet;
  String screen;
  String stage;

  /** When the last screen of the load went in. */
  @Column(name = "load_in")
  Instant loadIn;

  Instant at;
  boolean dry;

  /** Without the cabinet's reserve. */
  @Column(name = "required_pah")
  double requiredPaH;

  /** Without the cabinet's airflow factor. */
  @Column(name = "deficit_pah")
  double deficitPaH;

  Look look() {
    return new Look(requiredPaH, deficitPaH, dry);
  }
}
