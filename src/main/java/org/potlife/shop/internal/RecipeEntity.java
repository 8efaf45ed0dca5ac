package org.potlife.shop.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.ColumnTransformer;

/** A row of the table ink_recipe. */
@Entity
@Table(name = "ink_recipe")
class RecipeEntity {

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  Long id;

  String plant;
  String ink;
  int version;

  @Column(name = "agent_percent")
  double agentPercent;

  @ColumnTransformer(write = "cast(? as jsonb)")
  String recipe;

  Instant since;
}
