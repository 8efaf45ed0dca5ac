package org.potlife.platform;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import org.eclipse.microprofile.config.ConfigProvider;
import org.potlife.platform.db.EmbeddedDatabase;
import org.potlife.platform.db.StartRefused;

/** The process's entry. */
@QuarkusMain
public final class Potlife {

  private Potlife() {}

  /** Starts the database if none is configured, then the application, and waits for its end. */
  public static void main(String... args) {
    if (!databaseConfigured()) {
      try {
        startDatabase();
      } catch (StartRefused e) {
        // Logging starts with the application, which does not start.
        System.err.println(e.getMessage());
        System.exit(1);
      }
    }
    Quarkus.run(args);
  }

  private static void startDatabase() {
    EmbeddedDatabase database = EmbeddedDatabase.start(EmbeddedDatabase.locate());
    database.configuration().forEach(System::setProperty);
    Runtime.getRuntime().addShutdownHook(new Thread(new CloseAfterStop(database), "database-stop"));
  }

  private static boolean databaseConfigured() {
    return ConfigProvider.getConfig()
        .getOptionalValue("quarkus.datasource.jdbc.url", String.class)
        .filter(url -> !url.isBlank())
        .isPresent();
  }
}
