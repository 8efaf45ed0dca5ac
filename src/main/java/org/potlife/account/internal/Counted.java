package org.potlife.account.internal;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Under what an attempt to sign in is counted.
 *
 * @param rules what applies to each; the keys are hashes, in the order in which rows are locked
 */
record Counted(SortedMap<String, LockOut> rules) {

  Counted {
    rules = Collections.unmodifiableSortedMap(new TreeMap<>(rules));
  }

  /**
   * An attempt from a browser that is not known to the account: for this account from this network,
   * for the network, and for the account from wherever.
   */
  static Counted ofStranger(String name, String address) {
    TreeMap<String, LockOut> rules = new TreeMap<>();
    String network = ClientAddress.network(address);
    rules.put(accountKey(name), LockOut.OF_ACCOUNT);
    rules.put(accountKey(name) + Secret.kept("from " + network), LockOut.OF_SENDER);
    rules.put(Secret.kept("address " + network), LockOut.OF_ADDRESS);
    return new Counted(rules);
  }

  /**
   * An attempt from a browser that is known to the account: its own failures alone.
   *
   * @param shown its cookie
   */
  static Counted ofKnown(String name, String shown) {
    TreeMap<String, LockOut> rules = new TreeMap<>();
    rules.put(accountKey(name) + Secret.kept("browser " + shown), LockOut.OF_SENDER);
    return new Counted(rules);
  }

  /** What all keys of an account begin with. */
  static String accountKey(String name) {
    return Secret.kept("name " + name);
  }
}
