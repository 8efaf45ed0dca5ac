package org.potlife.platform.problem;

import io.quarkus.runtime.configuration.MemorySize;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * How long a body may be. Over {@code potlife.http.max-body-size} it is refused with a document; up
 * to {@code quarkus.http.limits.max-body-size} it is read to its end for that, beyond it the server
 * cuts the sender off.
 */
@Singleton
final class BodyLimit {

  private final long bytes;
  private final long hardBytes;

  @Inject
  BodyLimit(
      @ConfigProperty(name = "potlife.http.max-body-size") MemorySize bytes,
      @ConfigProperty(name = "quarkus.http.limits.max-body-size") MemorySize hardBytes) {
    this.bytes = bytes.asLongValue();
    this.hardBytes = hardBytes.asLongValue();
  }

  long bytes() {
    return bytes;
  }

  long hardBytes() {
    return hardBytes;
  }

  Problem problem() {
    return Problem.of(
        ProblemType.TOO_LARGE,
        "A body may have " + bytes + " bytes at most. Send the orders in several requests.");
  }
}
