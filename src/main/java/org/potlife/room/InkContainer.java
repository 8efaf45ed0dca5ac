package org.potlife.room;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import org.potlife.ink.InkLedger;

/**
 * A batch of which something was told, or a container on the shelf, with the fate of its grams.
 *
 * @param container what is on its label: the id of a batch, or the name of a container
 * @param stock whether it stands on the shelf
 * @param lightOnly whether it once had agent and is for light garments alone
 * @param origin the batch that it is left of; null otherwise
 * @param since when it came into the books
 * @param mixedAt null until somebody told
 * @param activatedAt null until somebody told, and for ink without agent
 * @param useBy last moment of its pot life; null without agent
 * @param goneAt when it was emptied or discarded; null while it serves
 * @param marks who did what and when, in order
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record InkContainer(
    String container,
    String ink,
    boolean stock,
    boolean lightOnly,
    String origin,
    Instant since,
    Instant mixedAt,
    Instant activatedAt,
    Instant useBy,
    Instant goneAt,
    InkLedger grams,
    List<Mark> marks) {

  /**
   * One thing that was done.
   *
   * @param mark mixed, activated, ready, used, returned, stocked, counted, emptied or discarded
   * @param person who did it; null when nobody was named
   * @param massG grams that were moved; null when none were
   * @param run the run that used it
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Mark(
      String mark, Instant at, String person, Integer massG, String run, String remark) {}
}
