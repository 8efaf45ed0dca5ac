package org.potlife.account.internal;

import io.vertx.ext.web.RoutingContext;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Arrays;

/** Who counts as one sender. */
final class ClientAddress {

  private static final int IPV6_NETWORK_BYTES = 8;

  private ClientAddress() {}

  /** The sender's address, in figures. */
  static String of(RoutingContext request) {
    return request.request().remoteAddress().hostAddress();
  }

  /**
   * The address itself, and of IPv6 the network of 64 bits: a single machine has a whole one to
   * choose addresses from.
   *
   * @param address in figures
   */
  static String network(String address) {
    if (address == null || !address.contains(":")) {
      return String.valueOf(address);
    }
    try {
      byte[] bytes = InetAddress.getByName(address).getAddress();
      return bytes.length == 16
          ? Arrays.toString(Arrays.copyOf(bytes, IPV6_NETWORK_BYTES))
          : Arrays.toString(bytes);
    } catch (UnknownHostException e) {
      return address;
    }
  }
}
