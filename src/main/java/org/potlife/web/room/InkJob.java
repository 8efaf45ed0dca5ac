package org.potlife.web.room;

import io.quarkus.qute.TemplateEnum;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import org.potlife.plan.list.ActivationList.Batch;
import org.potlife.room.InkContainer;

/**
 * A batch on the ink room's list, as far as it is.
 *
 * @param told what was marked on it; null when nothing was
 * @param readyAt earliest stroke, by its real activation when that was marked
 * @param useBy latest stroke; null without agent
 * @param dueAt when the next thing is to be done with it
 */
public record InkJob(
    Batch batch,
    InkContainer told,
    State state,
    OffsetDateTime readyAt,
    OffsetDateTime useBy,
    OffsetDateTime dueAt) {

  private static final String ROOM = "ink-room";

  /** What is to be done next. */
  @TemplateEnum
  public enum State {
    MIX,
    ACTIVATE,
    STANDING,
    IN_USE,
    GONE
  }

  static InkJob of(Batch batch, InkContainer told, Instant now) {
    OffsetDateTime ready = batch.readyAt();
    OffsetDateTime useBy = batch.useBy();
    if (told != null && told.activatedAt() != null && batch.activated()) {
      Duration stand = Duration.between(batch.activatedAt(), batch.readyAt());
      ready = told.activatedAt().plus(stand).atOffset(ready.getOffset());
      useBy = told.useBy() == null ? useBy : told.useBy().atOffset(ready.getOffset());
    }
    State state = state(batch, told, ready, now);
    return new InkJob(batch, told, state, ready, useBy, due(state, batch, ready, useBy));
  }

  private static State state(Batch batch, InkContainer told, OffsetDateTime ready, Instant now) {
    if (told != null && told.goneAt() != null) {
      return State.GONE;
    }
    if (batch.stock()) {
      return State.IN_USE;
    }
    if (told == null || told.mixedAt() == null) {
      return State.MIX;
    }
    if (batch.activated() && told.activatedAt() == null) {
      return State.ACTIVATE;
    }
    return batch.activated() && now.isBefore(ready.toInstant()) ? State.STANDING : State.IN_USE;
  }

  private static OffsetDateTime due(
      State state, Batch batch, OffsetDateTime ready, OffsetDateTime useBy) {
    return switch (state) {
      case MIX -> batch.mixFrom();
      case ACTIVATE -> batch.activateFrom();
      case STANDING -> ready;
      case IN_USE, GONE ->
          useBy != null || batch.uses().isEmpty()
              ? useBy == null ? ready : useBy
              : batch.uses().get(batch.uses().size() - 1).to();
    };
  }

  /** Whether it is still to be mixed. */
  public boolean toMix() {
    return state == State.MIX;
  }

  /** Whether its use-by is what counts now. */
  public boolean perishing() {
    return state == State.IN_USE && useBy != null;
  }

  public MarkButton mixed() {
    return mark("batch.mixed", "mixed");
  }

  public MarkButton activated() {
    return mark("batch.activated", "activated");
  }

  public MarkButton emptied() {
    return mark("batch.emptied", "emptied");
  }

  private MarkButton mark(String type, String done) {
    return MarkButton.of(type, ROOM, name() + ", " + done, "batch", batch.id());
  }

  /** What a notice calls it. */
  public String name() {
    return batch.ink().ink() + ", " + batch.totalG() + " g";
  }

  /** A name that may stand in a page as an id. */
  public String anchor() {
    return "b" + Integer.toHexString(batch.id().hashCode());
  }
}
