package org.potlife.plan.internal;

import java.util.List;
import org.potlife.audit.Finding;
import org.potlife.plan.Publication;
import org.potlife.platform.problem.Problem;
import org.potlife.platform.problem.ProblemType;

/**
 * A problem document with the broken rules beside it, as RFC 9457 allows.
 *
 * @param findings the rules that the plan breaks, where and how
 */
record RefusedPublication(
    String type, String title, int status, String detail, List<Finding> findings) {

  static RefusedPublication of(Publication publication) {
    Problem problem = Problem.of(ProblemType.CONFLICT, publication.refused());
    return new RefusedPublication(
        problem.type(),
        problem.title(),
        problem.status(),
        problem.detail(),
        publication.findings());
  }
}
