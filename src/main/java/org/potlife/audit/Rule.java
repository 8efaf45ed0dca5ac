package org.potlife.audit;

/** One rule of the shop, stated for the second time. */
interface Rule {

  /** Number by which the blueprint, the documents and the findings call it. */
  String number();

  /** The rule in a few words. */
  String title();

  /** Checks all the evidence; every fact looked at is noted. */
  void check(Evidence evidence, Notes notes);
}
