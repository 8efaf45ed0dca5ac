package org.potlife.shop;

import java.util.List;
import java.util.Map;
import org.potlife.ink.RecipeVersion;

/** The recipes that the plants' inks have and had. */
public interface Recipes {

  /**
   * All versions of an ink's recipe, the one in force first; empty when there never was the ink.
   */
  List<RecipeVersion> list(String plant, String ink);

  /** By ink, the number of the version in force. */
  Map<String, Integer> inForce(String plant);
}
