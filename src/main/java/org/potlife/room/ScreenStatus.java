package org.potlife.room;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.OffsetDateTime;
import java.util.List;

/**
 * A screen as it stands.
 *
 * @param screen id on the plan in force, of a kept stencil, or as it was reported
 * @param state what was reported last, else what the plan in force says by the time
 * @param basis where the state is from; null when nobody knows the state
 * @param since when the state was reported or planned to begin; null when neither is known
 * @param planned what the plan in force says; null when it has no such screen
 * @param step the step that is planned now; null when there is none
 * @param frame the frame as it was reported; null until somebody told
 * @param meshPerCm threads per cm; null when neither plan nor set-up know the screen
 * @param threadUm thread diameter, um
 * @param newtonPerCm last tension reported of the screen or its frame; null until somebody told
 * @param measuredAt when that was measured
 * @param history what was reported, in order; null in a list of screens
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record ScreenStatus(
    String screen,
    ScreenLife state,
    Basis basis,
    OffsetDateTime since,
    ScreenLife planned,
    String step,
    String frame,
    String design,
    String ink,
    Double meshPerCm,
    Double threadUm,
    boolean kept,
    Double newtonPerCm,
    OffsetDateTime measuredAt,
    List<Mark> history) {

  /** Where a state is from. */
  public enum Basis {
    /** Somebody told. */
    @JsonProperty("reported")
    REPORTED,
    /** The plan in force says so by the time. */
    @JsonProperty("planned")
    PLANNED
  }

  /**
   * One thing that was reported.
   *
   * @param type type of the event, for example screen.moved
   * @param state null unless it moved or broke
   * @param dry null unless somebody looked at its drying
   * @param person null when nobody was named
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Mark(
      OffsetDateTime at,
      String type,
      ScreenLife state,
      String frame,
      Double newtonPerCm,
      Boolean dry,
      String person) {}

  /** The same without its history. */
  public ScreenStatus brief() {
    return new ScreenStatus(
        screen,
        state,
        basis,
        since,
        planned,
        step,
        frame,
        design,
        ink,
        meshPerCm,
        threadUm,
        kept,
        newtonPerCm,
        measuredAt,
        null);
  }
}
