package org.potlife.account.internal;

import io.restassured.RestAssured;
import io.restassured.builder.RequestSpecBuilder;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Set;

/** People for tests of other packages: the link for the first of them, and who signs in at once. */
@ApplicationScoped
public class Staff {

  public static final String COOKIE = SessionCookie.NAME;

  @Inject House house;
  @Inject SetUpLink link;

  /** The address under which the first account is made. */
  public String setUp() {
    return "/set-up/" + link.make();
  }

  /** The session of a new account with one role; the test itself is nobody until {@link #at}. */
  public String session(String role) {
    house.account(role, Set.of(role));
    RestAssured.requestSpecification = null;
    return RestAssured.given()
        .redirects()
        .follow(false)
        .header("Origin", base())
        .formParam("name", role)
        .formParam("password", House.PASSWORD)
        .post(SignInPages.SIGN_IN)
        .then()
        .statusCode(303)
        .extract()
        .cookie(COOKIE);
  }

  /** All requests of the test come from this session until somebody leaves. */
  public static void at(String session) {
    // a new specification takes over what the one in force says, cookies too
    RestAssured.requestSpecification = null;
    RestAssured.requestSpecification =
        new RequestSpecBuilder().addCookie(COOKIE, session).addHeader("Origin", base()).build();
  }

  /** Nobody is signed in, and there is no account any more. */
  public void leave() {
    RestAssured.requestSpecification = null;
    house.empty();
  }

  private static String base() {
    return RestAssured.baseURI + ":" + RestAssured.port;
  }
}
