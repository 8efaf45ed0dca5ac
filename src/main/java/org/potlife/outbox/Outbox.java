package org.potlife.outbox;

/** Takes notices to others within the transaction of the change that they tell of. */
public interface Outbox {

  /**
   * Lets others be told once the current transaction is committed. Needs a transaction. The notices
   * of one transaction keep their order; no other transaction's come between them.
   */
  void add(Notice notice);
}
