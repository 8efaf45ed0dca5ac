package org.potlife.account.internal;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.RestAssured;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.potlife.platform.access.Role;
import org.potlife.shop.Shops;

/** Everybody knocks at every door of a service that lets nobody in without signing in. */
@QuarkusTest
@TestProfile(SignInRequired.class)
class EveryDoorKnowsItsRolesTest {

  @Inject Accounts accounts;
  @Inject Sessions sessions;
  @Inject Tokens tokens;
  @Inject Shops shops;
  @Inject House house;

  @AfterEach
  void empty() {
    house.empty();
  }

  @Test
  void everyDoorOpensForItsRolesAndForNobodyElse() throws Exception {
    String plant = house.plant();
    String base = "http://localhost:" + RestAssured.port;
    Map<Role, Long> people = new LinkedHashMap<>();
    for (Role role : Role.ofPeople()) {
      people.put(role, house.account(role.word(), Set.of(role.word())));
    }
    List<Visitor> programs = new ArrayList<>();
    for (Role role : Role.ofTokens()) {
      programs.add(Visitor.program(role.word(), house.token(plant, Set.of(role.word()))));
    }

    List<String> wrong = new ArrayList<>();
    int knocks = 0;
    for (Door door : Door.all()) {
      List<Visitor> visitors = new ArrayList<>(programs);
      visitors.add(Visitor.stranger());
      // a session each: one of the doors ends it
      people.forEach((role, id) -> visitors.add(Visitor.person(role.word(), sessions.begin(id))));
      for (Visitor visitor : visitors) {
        Visitor.Answer answer = visitor.knock(door, base, plant);
        knocks++;
        boolean opened = door.forAll() && !visitor.bound() || !answer.refused();
        boolean strange = answer.status() >= 500 || answer.status() == 415;
        if (opened != visitor.mayEnter(door) || strange || badlyRefused(door, visitor, answer)) {
          wrong.add(door + " for " + visitor.name() + ": " + answer);
        }
      }
    }

    assertThat(wrong).isEmpty();
    assertThat(knocks)
        .isEqualTo(Door.all().size() * (1 + Role.ofPeople().size() + programs.size()));
  }

  /** Strangers are told to sign in, people and programs that it is not theirs. */
  private static boolean badlyRefused(Door door, Visitor visitor, Visitor.Answer answer) {
    if (visitor.mayEnter(door)) {
      return door.forAll() && (answer.status() == 401 || answer.status() == 403);
    }
    if (visitor.roles() != null) {
      return answer.status() != 403;
    }
    return answer.status() != (door.isPage() ? 303 : 401);
  }
}
