package org.potlife.ink;

import com.fasterxml.jackson.annotation.JsonProperty;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Positive;
import jakarta.validation.constraints.Size;

/**
 * One line of a recipe.
 *
 * @param name what is on the container's label
 * @param role what the component does in the ink
 * @param percent share of the ink's mass without agent, 0 &lt; percent &lt;= 100
 */
public record Component(
    @NotBlank @Size(max = 80) String name,
    @NotNull Role role,
    @NotNull @Positive @DecimalMax("100") Double percent) {

  /** What a component does; the agent is no component, it is added on top of the ink's mass. */
  public enum Role {
    @JsonProperty("base")
    BASE,
    @JsonProperty("pigment")
    PIGMENT,
    @JsonProperty("retarder")
    RETARDER,
    @JsonProperty("other")
    OTHER
  }
}
