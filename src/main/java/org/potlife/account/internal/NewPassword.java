package org.potlife.account.internal;

/** A password as it was chosen and typed in twice. */
record NewPassword(String password, String again) {

  static NewPassword of(String password, String again) {
    return new NewPassword(password == null ? "" : password, again == null ? "" : again);
  }

  /**
   * @param name of the account
   */
  void check(String name, FormFaults faults) {
    PasswordRule.wrong(password, name).ifPresent(fault -> faults.add("password", fault));
    if (!password.equals(again)) {
      faults.add("again", "is not the same as the one above");
    }
  }
}
