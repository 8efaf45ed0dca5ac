package org.potlife.plan.internal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import javax.sql.DataSource;
import org.jboss.logging.Logger;

/**
 * The right to plan for one plant, among all replicas: an advisory lock of PostgreSQL, held on a
 * connection of its own. When the process dies the connection ends, and with it the lock.
 */
final class PlantLock {

  private static final Logger LOG = Logger.getLogger(PlantLock.class);
  private static final String KEY = "hashtextextended('potlife-plan:' || ?, 0)";

  private final Connection connection;
  private final String plant;

  private PlantLock(Connection connection, String plant) {
    this.connection = connection;
    this.plant = plant;
  }

  /** The lock, or nothing when somebody is planning for the plant already. */
  static Optional<PlantLock> tryFor(DataSource dataSource, String plant) throws SQLException {
    Connection connection = dataSource.getConnection();
    boolean held = false;
    try {
      held = ask(connection, "select pg_try_advisory_lock(" + KEY + ")", plant);
      return held ? Optional.of(new PlantLock(connection, plant)) : Optional.empty();
    } finally {
      if (!held) {
        connection.close();
      }
    }
  }

  /** Gives the right back. */
  void close() {
    try (connection) {
      ask(connection, "select pg_advisory_unlock(" + KEY + ")", plant);
    } catch (SQLException e) {
      // a broken connection has given the lock back by itself
      LOG.warnf(
          "The planning lock of plant %s went with its connection: %s", plant, e.getMessage());
    }
  }

  private static boolean ask(Connection connection, String sql, String plant) throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      statement.setString(1, plant);
      try (ResultSet rows = statement.executeQuery()) {
        return rows.next() && rows.getBoolean(1);
      }
    }
  }
}
