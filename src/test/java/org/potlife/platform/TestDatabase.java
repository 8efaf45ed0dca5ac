package org.potlife.platform;

import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.time.Duration;
import java.util.Map;

/**
 * A PostgreSQL for the tests, thrown away at their end. Registered in META-INF/services, so that no
 * test needs to ask for it.
 */
public class TestDatabase implements QuarkusTestResourceLifecycleManager {

  private EmbeddedPostgres server;

  @Override
  public Map<String, String> start() {
    try {
      server =
          EmbeddedPostgres.builder()
              .setPGStartupWait(Duration.ofSeconds(60))
              .setServerConfig("listen_addresses", "127.0.0.1")
              .start();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    return Map.of(
        "quarkus.datasource.jdbc.url",
        "jdbc:postgresql://127.0.0.1:" + server.getPort() + "/postgres",
        "quarkus.datasource.username",
        "postgres",
        "quarkus.datasource.password",
        "");
  }

  @Override
  public void stop() {
    try {
      server.close();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
