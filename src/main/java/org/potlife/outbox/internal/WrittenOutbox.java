package org.potlife.outbox.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Synchronization;
import jakarta.transaction.TransactionSynchronizationRegistry;
import jakarta.transaction.Transactional;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.sql.DataSource;
import org.potlife.outbox.Notice;
import org.potlife.outbox.Outbox;

/**
 * The outbox in the table outbox_event.
 *
 * <p>Notices wait until the transaction is about to commit and are written then, as its last
 * statements. The lock that orders the numbers is so the last one that a transaction takes,
 * whatever it locked before: it can be part of no deadlock, and it is held only while the commit
 * lasts.
 */
@ApplicationScoped
class WrittenOutbox implements Outbox {

  /** Where the database tells of news; the payload is the plant. */
  static final String CHANNEL = "potlife_outbox";

  private final TransactionSynchronizationRegistry transactions;
  private final DataSource dataSource;
  private final EventDocument document;

  @Inject
  WrittenOutbox(
      TransactionSynchronizationRegistry transactions,
      DataSource dataSource,
      EventDocument document) {
    this.transactions = transactions;
    this.dataSource = dataSource;
    this.document = document;
  }

  @Override
  @Transactional(Transactional.TxType.MANDATORY)
  public void add(Notice notice) {
    Waiting waiting = (Waiting) transactions.getResource(this);
    if (waiting == null) {
      waiting = new Waiting();
      transactions.putResource(this, waiting);
      transactions.registerInterposedSynchronization(waiting);
    }
    // plants in one order, should a transaction ever speak of two
    waiting.byPlant.computeIfAbsent(notice.plant(), plant -> new ArrayList<>()).add(notice);
  }

  /** The notices of one transaction. */
  private final class Waiting implements Synchronization {

    private final Map<String, List<Notice>> byPlant = new TreeMap<>();

    @Override
    public void beforeCompletion() {
      try (Connection connection = dataSource.getConnection()) {
        for (Map.Entry<String, List<Notice>> plant : byPlant.entrySet()) {
          write(connection, plant.getKey(), plant.getValue());
        }
      } catch (SQLException e) {
        // undoes the change: it must not stand untold
        throw new IllegalStateException("The outbox could not be written", e);
      }
    }

    @Override
    public void afterCompletion(int status) {
      // the transaction's end gives the lock back
    }
  }

  private void write(Connection connection, String plant, List<Notice> notices)
      throws SQLException {
    long seq = takeNumbers(connection, plant, notices.size());
    try (PreparedStatement insert =
        connection.prepareStatement(
            "insert into outbox_event (plant, seq, type, event) values (?, ?, ?, ?)")) {
      for (Notice notice : notices) {
        insert.setString(1, plant);
        insert.setLong(2, seq);
        insert.setString(3, notice.type());
        insert.setString(4, document.write(notice, seq));
        insert.addBatch();
        seq++;
      }
      insert.executeBatch();
    }
    try (PreparedStatement notify = connection.prepareStatement("select pg_notify(?, ?)")) {
      notify.setString(1, CHANNEL);
      notify.setString(2, plant);
      notify.execute();
    }
  }

  /** The first of as many numbers; holds the plant's head until the transaction ends. */
  private static long takeNumbers(Connection connection, String plant, int count)
      throws SQLException {
    try (PreparedStatement take =
        connection.prepareStatement(
            "insert into outbox_head (plant, last_seq) values (?, ?) on conflict (plant) do update"
                + " set last_seq = outbox_head.last_seq + excluded.last_seq returning last_seq")) {
      take.setString(1, plant);
      take.setLong(2, count);
      try (ResultSet rows = take.executeQuery()) {
        rows.next();
        return rows.getLong(1) - count + 1;
      }
    }
  }
}
