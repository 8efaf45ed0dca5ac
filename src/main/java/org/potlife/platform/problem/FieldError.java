package org.potlife.platform.problem;

/**
 * One value of a request that cannot be taken.
 *
 * @param pointer JSON pointer (RFC 6901) into the request's body; empty for the whole
 * @param detail what is wrong with it, what was given, what is allowed
 */
public record FieldError(String pointer, String detail) {

  /** A pointer one step further. */
  public static String child(String pointer, String name) {
    return pointer + "/" + name.replace("~", "~0").replace("/", "~1");
  }

  /** The same error seen from the document that holds this one at the given pointer. */
  public FieldError under(String parent) {
    return new FieldError(parent + pointer, detail);
  }
}
