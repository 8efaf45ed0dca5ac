package org.potlife.platform.problem;

import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Optional;
import java.util.Set;

/**
 * Tells a database that cannot be reached from a fault of the service, by the SQLSTATE that lies
 * somewhere among the causes (PostgreSQL, appendix A: error codes).
 */
final class DatabaseTrouble {

  private static final int MOST_LOOKED_AT = 50;

  /** Connection, resources, operator intervention, system: classes of SQLSTATE. */
  private static final Set<String> AWAY = Set.of("08", "53", "57", "58");

  /** Rolled back by the database: deadlock, serialisation. */
  private static final String ROLLED_BACK = "40";

  private DatabaseTrouble() {}

  /** What to answer when the database is the cause. */
  static Optional<String> in(Throwable failure) {
    Set<Throwable> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    Deque<Throwable> open = new ArrayDeque<>();
    open.add(failure);
    while (!open.isEmpty() && seen.size() < MOST_LOOKED_AT) {
      Throwable each = open.poll();
      if (!seen.add(each)) {
        continue;
      }
      Optional<String> words = each instanceof SQLException sql ? words(sql) : Optional.empty();
      if (words.isPresent()) {
        return words;
      }
      // what fails while a transaction is committed is handed on as suppressed
      open.addAll(Arrays.asList(each.getSuppressed()));
      if (each.getCause() != null) {
        open.add(each.getCause());
      }
    }
    return Optional.empty();
  }

  private static Optional<String> words(SQLException e) {
    String state = e.getSQLState();
    boolean poolEmpty =
        state == null && e.getMessage() != null && e.getMessage().contains("cquisition timeout");
    if (poolEmpty || state != null && AWAY.contains(kind(state))) {
      return Optional.of(
          "The database cannot be reached. Send the request again in a moment; a change that was"
              + " stored after all is recognised.");
    }
    return state != null && kind(state).equals(ROLLED_BACK)
        ? Optional.of("Two changes met in the database and this one was undone. Send it again.")
        : Optional.empty();
  }

  private static String kind(String state) {
    return state.length() < 2 ? "" : state.substring(0, 2);
  }
}
