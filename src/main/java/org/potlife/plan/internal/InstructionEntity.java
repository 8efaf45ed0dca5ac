package org.potlife.plan.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.ColumnTransformer;

/** A row of the table plan_instruction. */
@Entity
@Table(name = "plan_instruction")
class InstructionEntity {

  @Id String plant;

  long version;

  @ColumnTransformer(write = "cast(? as jsonb)")
  String document;

  @Column(name = "changed_at")
  Instant changedAt;
}
