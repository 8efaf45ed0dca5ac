package org.potlife.account.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.potlife.platform.access.Role;

/** Who may call what is said at every method that answers a request. */
class EveryDoorIsNamedTest {

  @Test
  void everyPathSaysWhoMayUseIt() {
    assertThat(Door.all()).hasSizeGreaterThan(50);
    assertThat(Door.all().stream().filter(door -> !door.declared()))
        .as("name the roles with @RolesAllowed(Roles.…) on the method or its class")
        .isEmpty();
  }

  @Test
  void everyRoleThatIsNamedIsOneOfOurs() {
    Set<String> known = Arrays.stream(Role.values()).map(Role::word).collect(Collectors.toSet());

    assertThat(Door.all()).allSatisfy(door -> assertThat(known).containsAll(door.roles()));
  }

  @Test
  void onlyTheWaysInAreOpenToStrangers() {
    assertThat(Door.all().stream().filter(Door::forAll).map(Door::toString))
        .containsExactlyInAnyOrder(
            "GET /sign-in",
            "POST /sign-in",
            "POST /sign-out",
            "GET /set-up",
            "GET /set-up/{secret}",
            "POST /set-up/{secret}");
  }

  @Test
  void noWriteIsForViewers() {
    assertThat(
            Door.all().stream()
                .filter(door -> !door.verb().equals("GET") && door.roles().contains("viewer"))
                .map(Door::toString))
        .as("nothing of the shop is changed by them; how a device shows figures is kept on it")
        .isSubsetOf("POST /manner");
  }
}
