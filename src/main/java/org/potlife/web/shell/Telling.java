package org.potlife.web.shell;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import org.potlife.event.EventReporters;
import org.potlife.platform.access.Caller;

/**
 * What whoever looks at a screen may tell; templates read it as {@code inject:tells} and offer only
 * that.
 */
@Named("tells")
@ApplicationScoped
public class Telling {

  private final Caller caller;

  @Inject
  Telling(Caller caller) {
    this.caller = caller;
  }

  /**
   * Whether the events' intake would take it.
   *
   * @param type type of a shop event, without prefix
   */
  public boolean may(String type) {
    return caller.mayAs(EventReporters.of(type));
  }
}
