package org.potlife.platform.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.SQLException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DatabaseTroubleTest {

  private static Throwable deepInside(SQLException cause) {
    RuntimeException rolledBack = new RuntimeException("rolled back");
    rolledBack.addSuppressed(new IllegalStateException("commit", cause));
    return new RuntimeException("request", rolledBack);
  }

  // PostgreSQL 17, appendix A: 08006 connection failure, 53300 too many connections, 57P01 admin
  // shutdown, 57P02 crash shutdown, 57P03 cannot connect now
  @ParameterizedTest
  @ValueSource(strings = {"08001", "08006", "53300", "57P01", "57P02", "57P03"})
  void aDatabaseThatIsAwayIsRecognisedWhereverItLiesAmongTheCauses(String state) {
    assertThat(DatabaseTrouble.in(deepInside(new SQLException("away", state))))
        .get()
        .asString()
        .contains("cannot be reached");
  }

  @Test
  void aDeadlockIsSomethingElse() {
    assertThat(DatabaseTrouble.in(deepInside(new SQLException("deadlock detected", "40P01"))))
        .get()
        .asString()
        .contains("Two changes met");
  }

  @Test
  void aPoolWithoutAFreeConnectionCountsAsAway() {
    assertThat(DatabaseTrouble.in(new SQLException("Acquisition timeout while waiting")))
        .isPresent();
  }

  @Test
  void aFaultOfTheServiceIsNotPutDownToTheDatabase() {
    assertThat(DatabaseTrouble.in(deepInside(new SQLException("not null violated", "23502"))))
        .isEmpty();
    assertThat(DatabaseTrouble.in(new IllegalStateException("wrong"))).isEmpty();
  }

  @Test
  void causesThatGoInACircleAreLookedAtOnce() {
    RuntimeException one = new RuntimeException("one");
    RuntimeException other = new RuntimeException("other", one);
    one.initCause(other);

    assertThat(DatabaseTrouble.in(one)).isEmpty();
  }
}
