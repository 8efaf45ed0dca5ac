package org.potlife.closeout;

import java.time.LocalDate;
import org.potlife.platform.problem.ProblemException;

/** The days' close-outs. */
public interface CloseOuts {

  /**
   * The close-out of a local day, as far as it is told by now.
   *
   * @throws ProblemException 404 when there is no such plant
   */
  CloseOut closeOut(String plant, LocalDate day);
}
