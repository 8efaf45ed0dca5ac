package org.potlife.account.internal;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.potlife.platform.access.Caller;

/** The entry of the present request, from when it is known to be a write until it is answered. */
@RequestScoped
class TrailDraft {

  private final Clock clock;
  private final Caller caller;
  private TrailBook.Begun begun;
  private String method;
  private String path;
  private String plant;
  private String about;

  @Inject
  TrailDraft(Clock clock, Caller caller) {
    this.clock = clock;
    this.caller = caller;
  }

  /** What is done; who does it is the caller, when anybody is known. */
  void open(String method, String path, String plant, String about) {
    this.method = method;
    this.path = path;
    this.plant = plant;
    this.about = about;
    caller.name().ifPresent(name -> begin(name, caller.kind().orElseThrow()));
  }

  /** Somebody of whom only the request itself told who it is. */
  void by(Account account) {
    if (method != null && begun == null) {
      begin(account.name(), Caller.Kind.ACCOUNT);
    }
  }

  private void begin(String who, Caller.Kind kind) {
    begun =
        new TrailBook.Begun(
            UUID.randomUUID(),
            clock.instant(),
            who,
            kind.name().toLowerCase(Locale.ROOT),
            method,
            path,
            plant,
            about);
  }

  /** Whether it is known what is done. */
  boolean isOpen() {
    return method != null;
  }

  Optional<TrailBook.Begun> begun() {
    return Optional.ofNullable(begun);
  }
}
