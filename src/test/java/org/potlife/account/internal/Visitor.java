package org.potlife.account.internal;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.net.http.HttpTimeoutException;
import java.time.Duration;
import java.util.Set;
import org.potlife.platform.access.Role;

/**
 * Somebody who knocks.
 *
 * @param name for the report
 * @param roles with all that they bring along; null for a stranger
 * @param bound whether it is a token, of one plant
 * @param header how it says who it is, name and value; a stranger has none
 */
record Visitor(String name, Set<String> roles, boolean bound, String... header) {

  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  static Visitor stranger() {
    return new Visitor("nobody", null, false);
  }

  static Visitor person(String role, String session) {
    return new Visitor(
        role,
        Role.withAllBroughtAlong(Set.of(role)),
        false,
        "Cookie",
        SessionCookie.NAME + "=" + session);
  }

  static Visitor program(String role, String token) {
    return new Visitor(
        "token " + role,
        Role.withAllBroughtAlong(Set.of(role)),
        true,
        "Authorization",
        "Bearer " + token);
  }

  /** What a knock was answered. */
  record Answer(int status, String location) {

    boolean sendsToSignIn() {
      return status == 303
          && (location.endsWith(SignInPages.SIGN_IN)
              || location.contains(SignInPages.SIGN_IN + "?"));
    }
  }

  boolean isStranger() {
    return roles == null;
  }

  /** Whether the door is to open. */
  boolean mayEnter(Door door) {
    if (bound && !door.ofPlant()) {
      return false;
    }
    if (door.forAll()) {
      return true;
    }
    return roles != null
        && (door.roles().isEmpty() || door.roles().stream().anyMatch(roles::contains));
  }

  Answer knock(Door door, String base, String plant) throws IOException, InterruptedException {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(base + door.address(plant)))
            .timeout(Duration.ofSeconds(20))
            .header("Accept", door.gives());
    if (header.length > 0) {
      request.header(header[0], header[1]);
    }
    if (door.verb().equals("GET")) {
      request.GET();
    } else {
      request
          .header("Origin", base)
          .header("Content-Type", door.takes().contains("*") ? "application/json" : door.takes())
          .method(door.verb(), BodyPublishers.ofString("nonsense"));
    }
    try {
      HttpResponse<InputStream> answer = CLIENT.send(request.build(), BodyHandlers.ofInputStream());
      answer.body().close();
      return new Answer(answer.statusCode(), answer.headers().firstValue("Location").orElse(""));
    } catch (HttpTimeoutException e) {
      // a stream that has nothing to tell yet: it was let in
      return new Answer(200, "");
    }
  }
}
