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

/** Everybody knocks at every door of a service that lets nobody in without signing in. */
@QuarkusTest
@TestProfile(SignInRequired.class)
class EveryDoorKnowsItsRolesTest {

  @Inject Sessions sessions;
  @Inject House house;

  @AfterEach
  void empty() {
    house.empty();
  }

  @Test
  void everyDoorOpensForItsRolesAndForNobodyElse() throws Exception {
    String plant = house.plant();
    String base = RestAssured.baseURI + ":" + RestAssured.port;
    Map<Role, Long> people = new LinkedHashMap<>();
    for (Role role : Role.ofPeople()) {
      people.put(role, house.account(role.word(), Set.of(role.word())));
    }
    List<Visitor> programs = new ArrayList<>();
    for (Role role : Role.ofTokens()) {
      programs.add(Visitor.program(role.word(), house.token(plant, Set.of(role.word()))));
    }

    List<String> wrong = new ArrayList<>();
    List<Visitor> visitors = visitors(programs, people);
    for (Door door : Door.all()) {
      for (Visitor visitor : visitors) {
        Visitor.Answer answer = visitor.knock(door, base, plant);
        if (isWrong(door, visitor, answer)) {
          wrong.add(door + " for " + visitor.name() + ": " + answer);
        }
      }
      if (door.path().equals("/sign-out")) {
        visitors = visitors(programs, people);
      }
    }

    assertThat(wrong).isEmpty();
    assertThat(visitors).hasSize(1 + Role.ofPeople().size() + Role.ofTokens().size());
  }

  private List<Visitor> visitors(List<Visitor> programs, Map<Role, Long> people) {
    List<Visitor> visitors = new ArrayList<>(programs);
    visitors.add(Visitor.stranger());
    people.forEach((role, id) -> visitors.add(Visitor.person(role.word(), sessions.begin(id))));
    return visitors;
  }

  /** Strangers are told to sign in, people and programs that it is not theirs. */
  private static boolean isWrong(Door door, Visitor visitor, Visitor.Answer answer) {
    int status = answer.status();
    if (visitor.mayEnter(door)) {
      boolean turnedAway =
          status == 401 || status == 403 || !door.forAll() && answer.sendsToSignIn();
      return turnedAway || status >= 500 || status == 415;
    }
    if (visitor.isStranger()) {
      return door.isPage() ? !answer.sendsToSignIn() : status != 401;
    }
    return status != 403;
  }
}
