package org.potlife.reliability;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.potlife.audit.Audit;
import org.potlife.audit.AuditReport;
import org.potlife.outbox.Receiver;
import org.potlife.outbox.Receiver.Posted;
import org.potlife.plan.PlanBasis;
import org.potlife.platform.json.JsonSettings;
import org.potlife.sheet.PlanSheet;

/** What must be true in the database when everything is over, whatever was killed before. */
final class Reckoning {

  private static final ObjectMapper MAPPER =
      JsonSettings.newMapper().disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES);

  private final Connection connection;

  Reckoning(Connection connection) {
    this.connection = connection;
  }

  private interface Row {
    void read(ResultSet row) throws SQLException, IOException;
  }

  private void each(String sql, Row row) throws SQLException, IOException {
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(sql)) {
      while (rows.next()) {
        row.read(rows);
      }
    }
  }

  /** Number of the newest event. */
  long head() throws SQLException, IOException {
    long[] head = new long[1];
    each("select last_seq from outbox_head", row -> head[0] = row.getLong(1));
    return head[0];
  }

  /** Every acknowledged write is there, once. */
  void nothingIsLostAndNothingAppliedTwice(Writers writers) throws SQLException, IOException {
    Map<String, String> orders = new HashMap<>();
    each(
        "select reference, state, version from customer_order",
        row -> orders.put(row.getString(1), row.getString(2) + " " + row.getLong(3)));
    assertThat(orders.keySet()).as("placed orders").containsAll(writers.placed());
    assertThat(writers.cancelled())
        .as("cancelled orders")
        .allSatisfy(order -> assertThat(orders).containsEntry(order, "cancelled 2"));
    assertThat(orders.values()).as("orders").containsOnly("open 1", "cancelled 2");

    Map<String, Integer> shelf = new HashMap<>();
    each(
        "select name, mixed_g + agent_g + found_g from ink_container where stock",
        row ->
            assertThat(shelf.put(row.getString(1), row.getInt(2))).as(row.getString(1)).isNull());
    assertThat(shelf.keySet()).as("containers").containsAll(writers.stocked());
    shelf.forEach(
        (name, massG) ->
            assertThat(massG)
                .as(name)
                .isEqualTo(Writers.massG(Integer.parseInt(name.substring("tub-".length())))));
  }

  /** The outbox has no gap, and each change is in it once. */
  void eachChangeIsToldOnce(Writers writers) throws SQLException, IOException {
    long[] last = new long[1];
    Set<String> names = new HashSet<>();
    each(
        "select seq, event::jsonb ->> 'type', event::jsonb ->> 'source', event::jsonb ->> 'id'"
            + " from outbox_event order by seq",
        row -> {
          assertThat(row.getLong(1)).isEqualTo(++last[0]);
          String name = row.getString(2) + " " + row.getString(3) + " " + row.getString(4);
          assertThat(names.add(name)).as(name).isTrue();
        });
    String source = " /plants/" + Yard.ID + "/orders ";
    writers
        .placed()
        .forEach(o -> assertThat(names).contains("org.potlife.order.placed" + source + o + ":1"));
    writers
        .cancelled()
        .forEach(
            o -> assertThat(names).contains("org.potlife.order.cancelled" + source + o + ":2"));
    writers
        .stocked()
        .forEach(
            c ->
                assertThat(names)
                    .contains("org.potlife.ink.stocked /scales/1 " + c.replace("tub", "s")));
    // nothing is told that is not so
    long[] orders = new long[1];
    each("select count(*) from customer_order", row -> orders[0] = row.getLong(1));
    assertThat(names.stream().filter(n -> n.startsWith("org.potlife.order.placed")).count())
        .isEqualTo(orders[0]);
  }

  /** The stream said all of it, in order, and once. */
  void theWitnessHeardAll(Witness witness) throws SQLException, IOException {
    assertThat(witness.faults()).as("on the stream").isEmpty();
    Map<Long, String> told = new TreeMap<>();
    each("select seq, event from outbox_event", row -> told.put(row.getLong(1), row.getString(2)));
    assertThat(new TreeMap<>(witness.heard())).isEqualTo(told);
  }

  /**
   * The webhook got all of it, in order, and at least once.
   *
   * @return deliveries that were repeated
   */
  long theErpGotAll(Receiver erp) throws SQLException, IOException {
    long last = 0;
    long repeated = 0;
    for (Posted each : erp.posted()) {
      assertThat(each.seq()).as("after " + last).isBetween(last, last + 1);
      repeated += each.seq() == last ? 1 : 0;
      last = each.seq();
    }
    assertThat(last).isEqualTo(head());
    return repeated;
  }

  private record Published(String id, PlanBasis basis, PlanSheet sheet) {}

  /**
   * Every plan that was ever in force passes the audit, against the one before it; one is in force.
   *
   * @return how many plans were in force in turn
   */
  int everyPublishedPlanIsSound(Planner planner) throws SQLException, IOException {
    Set<String> states = new HashSet<>();
    int[] inForce = new int[1];
    each(
        "select id, state from plan where published_at is not null",
        row -> {
          states.add(row.getString(1));
          inForce[0] += row.getString(2).equals("published") ? 1 : 0;
        });
    assertThat(states).containsAll(planner.published());
    assertThat(inForce[0]).isEqualTo(states.isEmpty() ? 0 : 1);

    Published[] before = new Published[1];
    each(
        "select id, basis, sheet from plan where published_at is not null order by published_at",
        row -> {
          Published plan =
              new Published(
                  row.getString(1),
                  MAPPER.readValue(row.getString(2), PlanBasis.class),
                  MAPPER.readValue(row.getString(3), PlanSheet.class));
          PlanBasis basis = plan.basis();
          AuditReport audit =
              Audit.of(
                  basis.shop(),
                  basis.orders(),
                  plan.sheet(),
                  Optional.ofNullable(before[0]).map(Published::sheet),
                  basis.rooms(),
                  basis.ink());
          assertThat(audit.findings()).as(plan.id()).isEqualTo(List.of());
          before[0] = plan;
        });
    return states.size();
  }
}
