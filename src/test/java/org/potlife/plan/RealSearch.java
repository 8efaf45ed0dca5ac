package org.potlife.plan;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.Map;

/** A service that searches itself, without {@link ScriptedPlanner}. */
public class RealSearch implements QuarkusTestProfile {

  @Override
  public Map<String, String> getConfigOverrides() {
    return Map.of("quarkus.arc.exclude-types", ScriptedPlanner.class.getName());
  }
}
