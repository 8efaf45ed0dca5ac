package org.potlife.event.internal;

import com.fasterxml.jackson.annotation.JsonProperty;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.potlife.platform.problem.FieldError;

/**
 * What a person decides about a parked event.
 *
 * @param by who decides, 1 to 100 characters
 * @param note why, up to 500 characters; needed to dismiss
 */
record SettlementBody(
    @NotNull How how,
    @NotBlank @Size(max = 100) @Schema(description = "Who decides") String by,
    @Size(max = 500) @Schema(description = "Why; needed to dismiss") String note) {

  /** What is to become of it. */
  enum How {
    /** It is tried once more, at its own time; it may be parked again. */
    @JsonProperty("apply-again")
    APPLY_AGAIN("apply-again"),
    /** It never takes effect. */
    @JsonProperty("dismiss")
    DISMISS("dismiss");

    private final String word;

    How(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }

  List<FieldError> check() {
    return how == How.DISMISS && (note == null || note.isBlank())
        ? List.of(new FieldError("/note", "must say why the event is dismissed"))
        : List.of();
  }
}
