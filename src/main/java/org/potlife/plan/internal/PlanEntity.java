package org.potlife.plan.internal;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Basic;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import org.hibernate.annotations.ColumnTransformer;
import org.hibernate.annotations.DynamicUpdate;

/**
 * A row of the table plan. Only changed columns are written: progress and the wish to stop are
 * written beside the entity, without moving its version.
 */
@Entity
@DynamicUpdate
@Table(name = "plan")
public class PlanEntity extends PanacheEntityBase {

  @Id public String id;

  public String plant;

  public int version;

  public String state;

  public LocalDate day;

  @Column(name = "solve_seconds")
  public int solveSeconds;

  public long seed;

  @Column(name = "publish_when_sound")
  public boolean publishWhenSound;

  @Column(name = "stop_requested", updatable = false)
  public boolean stopRequested;

  /** How often the search was begun; more often than once after a kill. */
  public int attempts;

  @Column(name = "requested_at")
  public Instant requestedAt;

  @Column(name = "planned_at")
  public Instant plannedAt;

  @Column(name = "finished_at")
  public Instant finishedAt;

  @Column(name = "published_at")
  public Instant publishedAt;

  @Column(name = "data_stamp")
  public long dataStamp;

  @Basic(fetch = FetchType.LAZY)
  @ColumnTransformer(write = "cast(? as jsonb)")
  public String basis;

  @Basic(fetch = FetchType.LAZY)
  @ColumnTransformer(write = "cast(? as jsonb)")
  public String sheet;

  @ColumnTransformer(write = "cast(? as jsonb)")
  public String score;

  @Basic(fetch = FetchType.LAZY)
  @ColumnTransformer(write = "cast(? as jsonb)")
  public String audit;

  @Column(name = "audit_passed")
  public Boolean auditPassed;

  @Column(updatable = false)
  @Basic(fetch = FetchType.LAZY)
  @ColumnTransformer(write = "cast(? as jsonb)")
  public String progress;

  public String failure;

  public String origin;

  public String restores;

  public String held;

  /** The draft is still to be published by itself, or held. */
  @Column(name = "decision_due")
  public boolean decisionDue;

  @ColumnTransformer(write = "cast(? as jsonb)")
  public String stability;

  /** The search is to begin anew on newer data. */
  @Column(name = "restart_requested")
  public boolean restartRequested;

  public int restarts;

  @Version
  @Column(name = "row_version")
  public long rowVersion;
}
