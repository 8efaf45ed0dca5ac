package org.potlife.outbox.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.Map;
import javax.sql.DataSource;
import org.potlife.order.Promise;

/** What was last told of plans and promises, in the tables promise_told and plan_told. */
@ApplicationScoped
class PromisesTold {

  private final DataSource dataSource;

  @Inject
  PromisesTold(DataSource dataSource) {
    this.dataSource = dataSource;
  }

  /** What each order of the plant was last told, by reference. */
  @Transactional(Transactional.TxType.MANDATORY)
  Map<String, Promise> list(String plant) {
    try (Connection connection = dataSource.getConnection();
        PreparedStatement select =
            connection.prepareStatement(
                "select reference, planned_finish, late_minutes, cause from promise_told"
                    + " where plant = ?")) {
      select.setString(1, plant);
      Map<String, Promise> told = new HashMap<>();
      try (ResultSet rows = select.executeQuery()) {
        while (rows.next()) {
          told.put(
              rows.getString(1),
              new Promise(
                  rows.getObject(2, OffsetDateTime.class), rows.getLong(3), rows.getString(4)));
        }
      }
      return told;
    } catch (SQLException e) {
      throw unwritten(e);
    }
  }

  /** Keeps what is told now. */
  @Transactional(Transactional.TxType.MANDATORY)
  void keep(String plant, Map<String, Promise> told) {
    try (Connection connection = dataSource.getConnection();
        PreparedStatement upsert =
            connection.prepareStatement(
                "insert into promise_told (plant, reference, planned_finish, late_minutes, cause)"
                    + " values (?, ?, ?, ?, ?) on conflict (plant, reference) do update set"
                    + " planned_finish = excluded.planned_finish,"
                    + " late_minutes = excluded.late_minutes, cause = excluded.cause")) {
      for (Map.Entry<String, Promise> each : told.entrySet()) {
        upsert.setString(1, plant);
        upsert.setString(2, each.getKey());
        upsert.setObject(3, each.getValue().plannedFinish());
        upsert.setLong(4, each.getValue().lateMinutes());
        upsert.setString(5, each.getValue().cause());
        upsert.addBatch();
      }
      upsert.executeBatch();
    } catch (SQLException e) {
      throw unwritten(e);
    }
  }

  /** Forgets an order that nothing is promised to any more. */
  @Transactional(Transactional.TxType.MANDATORY)
  void forget(String plant, String reference) {
    try (Connection connection = dataSource.getConnection();
        PreparedStatement delete =
            connection.prepareStatement(
                "delete from promise_told where plant = ? and reference = ?")) {
      delete.setString(1, plant);
      delete.setString(2, reference);
      delete.executeUpdate();
    } catch (SQLException e) {
      throw unwritten(e);
    }
  }

  /**
   * Notes which plan is told to be in force.
   *
   * @return the one that was told before, or null
   */
  @Transactional(Transactional.TxType.MANDATORY)
  String planInForce(String plant, String plan) {
    try (Connection connection = dataSource.getConnection()) {
      String before = planTold(connection, plant);
      try (PreparedStatement upsert =
          connection.prepareStatement(
              "insert into plan_told (plant, plan) values (?, ?)"
                  + " on conflict (plant) do update set plan = excluded.plan")) {
        upsert.setString(1, plant);
        upsert.setString(2, plan);
        upsert.executeUpdate();
      }
      return before;
    } catch (SQLException e) {
      throw unwritten(e);
    }
  }

  private static String planTold(Connection connection, String plant) throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement("select plan from plan_told where plant = ?")) {
      select.setString(1, plant);
      try (ResultSet rows = select.executeQuery()) {
        return rows.next() ? rows.getString(1) : null;
      }
    }
  }

  private static IllegalStateException unwritten(SQLException e) {
    return new IllegalStateException("What was told of promises could not be kept", e);
  }
}
