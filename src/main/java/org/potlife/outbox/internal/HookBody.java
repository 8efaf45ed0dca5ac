package org.potlife.outbox.internal;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.potlife.platform.problem.FieldError;

/**
 * A webhook that a client wants.
 *
 * @param url where the events are posted
 * @param types names of types; null or empty for all
 * @param secret key of the signature; may be left out when the hook is there already
 */
record HookBody(
    @Schema(description = "https, or http on this machine", example = "https://erp.example/hook")
        String url,
    @Schema(description = "Names such as plan.published or plan.*; none for all")
        List<String> types,
    @Schema(
            description = "32 to 200 bytes; kept when left out; never shown again",
            writeOnly = true)
        String secret) {

  private static final int SHORTEST_SECRET = 32;
  private static final int LONGEST_SECRET = 200;
  private static final int MOST_TYPES = 50;

  /** Checked by hand: a message that echoes what was sent would show the secret. */
  List<FieldError> check(boolean plainHttp) {
    List<FieldError> errors = new ArrayList<>();
    HookAddress.fault(url, plainHttp).ifPresent(fault -> errors.add(new FieldError("/url", fault)));
    if (types != null && types.size() > MOST_TYPES) {
      errors.add(new FieldError("/types", "must have " + MOST_TYPES + " names at most"));
    } else {
      for (int i = 0; types != null && i < types.size(); i++) {
        if (types.get(i) == null || !new EventTypes(List.of(types.get(i))).misnamed().isEmpty()) {
          errors.add(
              new FieldError("/types/" + i, "must be a name such as plan.published or plan.*"));
        }
      }
    }
    if (secret != null) {
      int bytes = secret.getBytes(StandardCharsets.UTF_8).length;
      if (bytes < SHORTEST_SECRET || bytes > LONGEST_SECRET) {
        errors.add(
            new FieldError(
                "/secret",
                "must have " + SHORTEST_SECRET + " to " + LONGEST_SECRET + " bytes, had " + bytes));
      }
    }
    return errors;
  }

  EventTypes wanted() {
    return types == null ? EventTypes.ALL : new EventTypes(types);
  }

  /** Without the secret, should anybody ever log it. */
  @Override
  public String toString() {
    return "HookBody[url=" + url + ", types=" + types + "]";
  }
}
