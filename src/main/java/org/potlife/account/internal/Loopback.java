package org.potlife.account.internal;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Locale;
import java.util.regex.Pattern;

/** What is on this computer itself. Names are never looked up. */
final class Loopback {

  private static final Pattern ADDRESS =
      Pattern.compile("127(\\.\\d{1,3}){3}|[0-9a-f:.]*:[0-9a-f:.]*");

  private Loopback() {}

  /**
   * Whether the host of a URL or of a setting is this computer by a name that nobody can rebind.
   */
  static boolean isHost(String host) {
    if (host == null) {
      return false;
    }
    String bare = host.toLowerCase(Locale.ROOT);
    if (bare.startsWith("[") && bare.endsWith("]")) {
      bare = bare.substring(1, bare.length() - 1);
    }
    return bare.equals("localhost") || isAddress(bare);
  }

  /** Whether an address in figures is this computer. */
  static boolean isAddress(String address) {
    if (address == null || !ADDRESS.matcher(address.toLowerCase(Locale.ROOT)).matches()) {
      return false;
    }
    try {
      return InetAddress.getByName(address).isLoopbackAddress();
    } catch (UnknownHostException e) {
      return false;
    }
  }
}
