package org.potlife.ink;

import java.time.Instant;
import java.util.List;

/**
 * A recipe as an ink had it for a while.
 *
 * @param version counts the changes of the ink's recipe or agent, from 1
 * @param since when it came into force
 * @param agentPercent agent on top of the ink's mass, percent
 * @param recipe components in weighing order
 */
public record RecipeVersion(
    String ink, int version, Instant since, double agentPercent, List<Component> recipe) {

  public RecipeVersion {
    recipe = List.copyOf(recipe);
  }

  /** Whether an ink is still weighed by it. */
  public boolean isOf(Ink current) {
    return ink.equals(current.id())
        && agentPercent == current.agentPercent()
        && recipe.equals(current.recipe());
  }
}
