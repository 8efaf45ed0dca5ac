package org.potlife.account.internal;

/** Where a person is led after signing in: a page of this service and of no other. */
final class LocalPath {

  private LocalPath() {}

  /** The path if it is one of this service, else the start page. */
  static String orStart(String path) {
    boolean ours =
        path != null
            && path.startsWith("/")
            && !path.startsWith("//")
            && path.length() <= 2000
            && path.chars().allMatch(c -> c > ' ' && c < 0x7f && c != '\\');
    return ours ? path : "/";
  }
}
