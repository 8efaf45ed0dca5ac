package org.potlife.platform;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import javax.sql.DataSource;

/** A look into the tables behind the service's back. */
@ApplicationScoped
public class Rows {

  @Inject DataSource source;

  public long orders(String plant) {
    return number("select count(*) from customer_order where plant = ?", plant);
  }

  public long events(String plant) {
    return number("select count(*) from shop_event where plant = ?", plant);
  }

  public long eventsOf(String plant, String source) {
    return number(
        "select count(*) from shop_event where source = '" + source + "' and plant = ?", plant);
  }

  /** Number of the event that was recorded last. */
  public long newestEvent(String plant) {
    return number("select max(seq) from shop_event where plant = ?", plant);
  }

  public long keys(String plant) {
    return number("select count(*) from idempotency_key where plant = ?", plant);
  }

  public long dataStamp(String plant) {
    return number("select coalesce(sum(data_stamp), 0) from plant where id = ?", plant);
  }

  /**
   * What is stored, in figures: every table that a request may write, counted and, where rows
   * change, with their versions. What jobs write by themselves is left out.
   */
  public String everything() {
    return text(
        "select concat_ws(' ', (select sum(version + data_stamp) from plant),"
            + " (select count(*) || '+' || coalesce(sum(version), 0) from customer_order),"
            + " (select count(*) from idempotency_key), (select count(*) from shop_event),"
            + " (select count(*) from ink_mark), (select count(*) from ink_container),"
            + " (select count(*) from emulsion_look), (select count(*) from ink_recipe),"
            + " (select count(*) from plan),"
            + " (select count(*) from plan where state in ('published', 'superseded')),"
            + " (select count(*) || '+' || coalesce(sum(version), 0) from webhook),"
            + " (select count(*) from outbox_event where type not like 'plan.%'))");
  }

  private String text(String sql) {
    try (Connection connection = source.getConnection();
        PreparedStatement statement = connection.prepareStatement(sql);
        ResultSet result = statement.executeQuery()) {
      result.next();
      return result.getString(1);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  public long change(String sql, String plant) {
    try (Connection connection = source.getConnection();
        PreparedStatement statement = connection.prepareStatement(sql)) {
      statement.setString(1, plant);
      return statement.executeUpdate();
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  private long number(String sql, String plant) {
    try (Connection connection = source.getConnection();
        PreparedStatement statement = connection.prepareStatement(sql)) {
      statement.setString(1, plant);
      try (ResultSet result = statement.executeQuery()) {
        result.next();
        return result.getLong(1);
      }
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }
}
