package org.potlife.platform.db;

/** The service cannot start; the message is one line for the operator and names the remedy. */
public final class StartRefused extends RuntimeException {

  public StartRefused(String message) {
    super(message);
  }

  public StartRefused(String message, Throwable cause) {
    super(message, cause);
  }
}
