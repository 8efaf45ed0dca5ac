package org.potlife.account.internal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LoopbackTest {

  @ParameterizedTest
  @ValueSource(strings = {"localhost", "LocalHost", "127.0.0.1", "127.1.2.3", "[::1]", "::1"})
  void thisComputer(String host) {
    assertThat(Loopback.isHost(host)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "0.0.0.0",
        "192.168.1.4",
        "localhost.elsewhere.example",
        "127.0.0.1.elsewhere.example",
        "rebound.example",
        "[::2]",
        "2130706433"
      })
  void notThisComputer(String host) {
    assertThat(Loopback.isHost(host)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"127.0.0.1", "::1", "0:0:0:0:0:0:0:1"})
  void theConnectionComesFromHere(String address) {
    assertThat(Loopback.isAddress(address)).isTrue();
    assertThat(Loopback.isAddress("10.0.0.7")).isFalse();
    assertThat(Loopback.isAddress("localhost")).isFalse();
    assertThat(Loopback.isAddress(null)).isFalse();
  }
}
