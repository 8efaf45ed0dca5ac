package org.potlife.account.internal;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.Map;

/** A service that lets nobody in without signing in. */
public class SignInRequired implements QuarkusTestProfile {

  @Override
  public Map<String, String> getConfigOverrides() {
    return Map.of("potlife.sign-in", "required");
  }
}
