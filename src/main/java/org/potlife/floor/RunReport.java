package org.potlife.floor;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.OffsetDateTime;

/**
 * What the crew has told of one run up to a moment.
 *
 * @param run id of the run
 * @param press press that it was planned on when the first thing was told of it
 * @param plannedPieces pieces that it was to print then, trial pieces included
 * @param firstToldAt time of the earliest thing that was told
 * @param startedAt when the set-up began; null when nobody told
 * @param approvedAt when the first piece was approved; null when nobody told
 * @param countedAt time of the count that stands; null without a count
 * @param good good pieces by the count that stands or the finish, less those found spoiled later
 * @param spoiled spoiled pieces, trial pieces included
 * @param endedAt when it was finished or stopped for good; null while it runs
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record RunReport(
    String run,
    String order,
    String design,
    String position,
    int lot,
    String press,
    int plannedPieces,
    OffsetDateTime firstToldAt,
    OffsetDateTime startedAt,
    OffsetDateTime approvedAt,
    OffsetDateTime countedAt,
    int good,
    int spoiled,
    OffsetDateTime endedAt) {

  /** Pieces that went through the press. */
  public int printed() {
    return good + spoiled;
  }

  /** When it began: as told, else as published, but not after the first thing told of it. */
  public OffsetDateTime begunAt(OffsetDateTime published) {
    if (startedAt != null) {
      return startedAt;
    }
    return published.isAfter(firstToldAt) ? firstToldAt : published;
  }

  public boolean ended() {
    return endedAt != null;
  }
}
