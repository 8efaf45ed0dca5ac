package org.potlife.plan.internal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import javax.sql.DataSource;
import org.jboss.logging.Logger;

/**
 * The right to plan for one plant, or to ask its plan, among all replicas: an advisory lock of
 * PostgreSQL, held on a connection of its own. When the process dies the connection ends, and with
 * it the lock.
 */
final class PlantLock {

  private static final Logger LOG = Logger.getLogger(PlantLock.class);
  private static final String KEY = "hashtextextended(?, 0)";

  private final Connection connection;
  private final String name;

  private PlantLock(Connection connection, String name) {
    this.connection = connection;
    this.name = name;
  }

  /** What the lock is for; locks for different things do not hinder each other. */
  enum Purpose {
    /** To solve a plan. */
    PLAN("potlife-plan:"),
    /** To answer a question. */
    QUESTION("potlife-question:");

    private final String prefix;

    Purpose(String prefix) {
      this.prefix = prefix;
    }
  }

  /** The lock, or nothing when somebody holds the plant's one already. */
  static Optional<PlantLock> tryFor(DataSource dataSource, String plant, Purpose purpose)
      throws SQLException {
    String name = purpose.prefix + plant;
    Connection connection = dataSource.getConnection();
    boolean held = false;
    try {
      held = ask(connection, "select pg_try_advisory_lock(" + KEY + ")", name);
      return held ? Optional.of(new PlantLock(connection, name)) : Optional.empty();
    } finally {
      if (!held) {
        connection.close();
      }
    }
  }

  /** Gives the right back. */
  void close() {
    try (connection) {
      ask(connection, "select pg_advisory_unlock(" + KEY + ")", name);
    } catch (SQLException e) {
      // a broken connection has given the lock back by itself
      LOG.warnf("The lock %s went with its connection: %s", name, e.getMessage());
    }
  }

  private static boolean ask(Connection connection, String sql, String name) throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      statement.setString(1, name);
      try (ResultSet rows = statement.executeQuery()) {
        return rows.next() && rows.getBoolean(1);
      }
    }
  }
}
