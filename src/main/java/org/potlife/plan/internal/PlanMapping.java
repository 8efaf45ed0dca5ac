package org.potlife.plan.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.potlife.audit.AuditReport;
import org.potlife.plan.PlanBasis;
import org.potlife.plan.PlanOrigin;
import org.potlife.plan.PlanState;
import org.potlife.plan.PlanSummary;
import org.potlife.plan.Stability;
import org.potlife.plan.StoredPlan;
import org.potlife.planning.SolveWatch.Progress;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.PlanScore;

/** Rows to plans, documents to JSON and back. */
@Singleton
class PlanMapping {

  private static final TypeReference<List<Progress>> CURVE = new TypeReference<>() {};

  private final ObjectMapper mapper;
  private final KeptPlans kept;

  @Inject
  PlanMapping(ObjectMapper mapper, KeptPlans kept) {
    this.kept = kept;
    // what an older release wrote must stay readable
    this.mapper = mapper.copy().disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES);
  }

  /**
   * @param dataStamp the plant's present data stamp
   * @param zone the plant's zone
   */
  PlanSummary summary(PlanEntity e, long dataStamp, ZoneId zone) {
    return new PlanSummary(
        e.id,
        e.plant,
        e.version,
        PlanState.ofWord(e.state),
        e.day,
        e.dataStamp != dataStamp,
        e.solveSeconds,
        e.seed,
        at(e.requestedAt, zone),
        at(e.plannedAt, zone),
        at(e.finishedAt, zone),
        at(e.publishedAt, zone),
        e.failure,
        e.auditPassed,
        e.score == null ? null : read(e.score, PlanScore.class),
        PlanOrigin.ofWord(e.origin),
        e.restores,
        e.held,
        e.stability == null ? null : read(e.stability, Stability.class));
  }

  StoredPlan stored(PlanEntity e, long dataStamp, ZoneId zone) {
    KeptPlans.Documents documents = kept.of(e, () -> new KeptPlans.Documents(basis(e), sheet(e)));
    return new StoredPlan(
        summary(e, dataStamp, zone),
        e.rowVersion,
        progress(e),
        documents.basis(),
        documents.sheet(),
        audit(e));
  }

  Optional<PlanBasis> basis(PlanEntity e) {
    return Optional.ofNullable(e.basis).map(json -> read(json, PlanBasis.class));
  }

  Optional<PlanSheet> sheet(PlanEntity e) {
    return Optional.ofNullable(e.sheet).map(json -> read(json, PlanSheet.class));
  }

  Optional<AuditReport> audit(PlanEntity e) {
    return Optional.ofNullable(e.audit).map(json -> read(json, AuditReport.class));
  }

  List<Progress> progress(PlanEntity plan) {
    try {
      return plan.progress == null ? List.of() : mapper.readValue(plan.progress, CURVE);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A stored curve is unreadable", e);
    }
  }

  private <T> T read(String json, Class<T> type) {
    try {
      return mapper.readValue(json, type);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A stored " + type.getSimpleName() + " is unreadable", e);
    }
  }

  String write(Object value) {
    try {
      return mapper.writeValueAsString(value);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private static OffsetDateTime at(Instant instant, ZoneId zone) {
    return instant == null ? null : instant.atZone(zone).toOffsetDateTime();
  }
}
