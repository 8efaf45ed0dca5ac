package org.potlife.account.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.potlife.platform.access.Role;
import org.potlife.platform.access.Roles;

class SmallThingsTest {

  @ParameterizedTest
  @ValueSource(
      strings = {"//elsewhere.example", "https://elsewhere.example", "/\\elsewhere", "x", "/a\nb"})
  void afterSigningInNobodyIsLedElsewhere(String to) {
    assertThat(LocalPath.orStart(to)).isEqualTo("/");
  }

  @Test
  void afterSigningInOneIsBackWhereOneWas() {
    assertThat(LocalPath.orStart("/plants/demo?day=2026-12-01"))
        .isEqualTo("/plants/demo?day=2026-12-01");
    assertThat(LocalPath.orStart(null)).isEqualTo("/");
  }

  @Test
  void secretsAreLongAndNotKept() {
    String token = Secret.freshToken();

    assertThat(token).matches("potlife_[A-Za-z0-9_-]{43}").isNotEqualTo(Secret.freshToken());
    assertThat(Secret.kept(token)).matches("[0-9a-f]{64}").isEqualTo(Secret.kept(token));
    assertThat(Secret.freshPassword()).matches("([a-z2-9]{4}-){3}[a-z2-9]{4}");
    assertThat(PasswordRule.wrong(Secret.freshPassword(), "mara")).isEmpty();
  }

  /** FIPS 180-4 example: SHA-256 of "abc". */
  @Test
  void whatIsKeptIsSha256() {
    assertThat(Secret.kept("abc"))
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  }

  @Test
  void aPlannerStandsInForEveryRoomAndTheErpForNobody() {
    assertThat(Role.withAllBroughtAlong(List.of(Roles.PLANNER)))
        .containsExactlyInAnyOrder("planner", "press", "ink-room", "screen-room", "viewer");
    assertThat(Role.withAllBroughtAlong(List.of(Roles.PRESS)))
        .containsExactlyInAnyOrder("press", "viewer");
    assertThat(Role.withAllBroughtAlong(List.of(Roles.ADMINISTRATOR)))
        .containsExactlyInAnyOrder("administrator", "viewer");
    assertThat(Role.withAllBroughtAlong(Set.of(Roles.ERP))).containsExactly("erp");
    assertThat(Role.withAllBroughtAlong(Set.of("of another house"))).hasSize(1);
  }

  @Test
  void manyAddressesOfOneNetworkAreOneSender() {
    assertThat(ClientAddress.network("2001:db8:1:2::7"))
        .isEqualTo(ClientAddress.network("2001:db8:1:2:ffff::9"))
        .isNotEqualTo(ClientAddress.network("2001:db8:1:3::7"));
    assertThat(ClientAddress.network("192.0.2.7")).isNotEqualTo(ClientAddress.network("192.0.2.8"));
  }

  @Test
  void aNameIsPlainAndARoleIsKnown() {
    assertThat(AccountForm.of(" Mara ", "Mara", List.of("press")).check().isAny()).isFalse();
    FormFaults faults = AccountForm.of("m a", " ", List.of("erp")).check();
    assertThat(faults.all()).containsOnlyKeys("name", "fullName", "roles");
  }
}
