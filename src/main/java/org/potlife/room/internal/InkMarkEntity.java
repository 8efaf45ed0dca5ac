package org.potlife.room.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.potlife.room.InkContainer;

/** A row of the table ink_mark. */
@Entity
@Table(name = "ink_mark")
class InkMarkEntity {

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  Long id;

  String plant;
  String container;
  String mark;
  Instant at;
  String person;

  @Column(name = "mass_g")
  Integer massG;

  String run;
  String remark;

  InkContainer.Mark mark() {
    return new InkContainer.Mark(mark, at, person, massG, run, remark);
  }
}
