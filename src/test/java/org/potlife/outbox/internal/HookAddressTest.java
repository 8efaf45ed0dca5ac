package org.potlife.outbox.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where events may go: RFC 3927 and 4291 (link-local), 1122 and 5771 (unspecified, multicast). */
class HookAddressTest {

  @ParameterizedTest
  @ValueSource(strings = {"169.254.10.20", "fe80::1", "0.0.0.0", "::", "224.0.0.1", "ff02::1"})
  void whatOnlyNeighboursAnswerIsToldNothing(String number) throws UnknownHostException {
    assertThat(HookAddress.isBarred(InetAddress.getByName(number), false)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"192.0.2.7", "10.1.2.3", "192.168.7.1", "2001:db8::7"})
  void theWorldAndTheShopsOwnNetworkAreTold(String number) throws UnknownHostException {
    assertThat(HookAddress.isBarred(InetAddress.getByName(number), false)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"http://localhost:9000/erp", "http://127.0.0.1/erp", "http://[::1]/erp"})
  void thisMachineIsToldWhereItIsMeant(String url) {
    assertThat(HookAddress.barred(URI.create(url))).isEmpty();
    assertThat(HookAddress.fault(url, false)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"https://169.254.10.20/erp", "https://[fe80::1]/erp"})
  void anAddressThatIsBarredIsSaidToBeWhenItIsUsed(String url) {
    assertThat(HookAddress.barred(URI.create(url))).isPresent();
  }
}
