package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.util.Optional;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.potlife.plan.internal.PlantLock.Purpose;
import org.potlife.platform.problem.ProblemException;
import org.potlife.platform.problem.ProblemType;

/**
 * One question to a plant's plan at a time, over all instances: each needs a processor for some
 * seconds. A plan that is being solved goes on, it has a lock of its own.
 */
@ApplicationScoped
class QuestionTurn {

  private final DataSource dataSource;

  @Inject
  QuestionTurn(DataSource dataSource) {
    this.dataSource = dataSource;
  }

  /**
   * Answers when it is nobody else's turn.
   *
   * @throws ProblemException 429 while another question is being answered
   */
  <T> T answer(String plant, Supplier<T> answer) throws SQLException {
    Optional<PlantLock> turn = PlantLock.tryFor(dataSource, plant, Purpose.QUESTION);
    if (turn.isEmpty()) {
      throw new ProblemException(
          ProblemType.TOO_MANY_REQUESTS,
          "Another question to this plant's plan is being answered. Ask again in a moment.");
    }
    try {
      return answer.get();
    } finally {
      turn.get().close();
    }
  }
}
