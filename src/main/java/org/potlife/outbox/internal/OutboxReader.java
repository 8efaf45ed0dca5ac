package org.potlife.outbox.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;

/** Reads the table outbox_event. */
@ApplicationScoped
class OutboxReader {

  private final DataSource dataSource;

  @Inject
  OutboxReader(DataSource dataSource) {
    this.dataSource = dataSource;
  }

  /**
   * What is kept of a plant.
   *
   * @param first number of the oldest event that is still kept; last + 1 when none is
   * @param last number of the newest event ever; 0 before the first
   */
  record Kept(long first, long last) {}

  Kept kept(String plant) {
    return query(
        "select coalesce((select min(seq) from outbox_event where plant = ?),"
            + " coalesce(max(last_seq), 0) + 1), coalesce(max(last_seq), 0)"
            + " from outbox_head where plant = ?",
        statement -> {
          statement.setString(1, plant);
          statement.setString(2, plant);
        },
        rows -> {
          rows.next();
          return new Kept(rows.getLong(1), rows.getLong(2));
        });
  }

  /** Events with higher numbers, the lowest first, at most {@code limit}. */
  List<OutboxEvent> after(String plant, long seq, int limit) {
    return query(
        "select seq, type, event from outbox_event where plant = ? and seq > ?"
            + " order by seq limit ?",
        statement -> {
          statement.setString(1, plant);
          statement.setLong(2, seq);
          statement.setInt(3, limit);
        },
        rows -> {
          List<OutboxEvent> events = new ArrayList<>();
          while (rows.next()) {
            events.add(new OutboxEvent(rows.getLong(1), rows.getString(2), rows.getString(3)));
          }
          return events;
        });
  }

  private interface Setting {
    void on(PreparedStatement statement) throws SQLException;
  }

  private interface Reading<T> {
    T of(ResultSet rows) throws SQLException;
  }

  private <T> T query(String sql, Setting setting, Reading<T> reading) {
    try (Connection connection = dataSource.getConnection();
        PreparedStatement statement = connection.prepareStatement(sql)) {
      setting.on(statement);
      try (ResultSet rows = statement.executeQuery()) {
        return reading.of(rows);
      }
    } catch (SQLException e) {
      throw new IllegalStateException("The outbox could not be read", e);
    }
  }
}
