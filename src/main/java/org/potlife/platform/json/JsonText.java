package org.potlife.platform.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.potlife.platform.problem.ProblemException;
import org.potlife.platform.problem.ProblemType;

/** From bytes to a tree, and what counts as text. */
final class JsonText {

  private static final int LONGEST_ECHO = 60;

  private JsonText() {}

  /**
   * The tree of a body.
   *
   * @throws ProblemException not-json when it is no JSON, has a key twice, or is nested too deep
   */
  static JsonNode parse(ObjectMapper mapper, byte[] body) {
    if (body == null || body.length == 0) {
      throw notJson("The body is empty.");
    }
    try {
      JsonNode tree = mapper.readTree(body);
      if (tree == null || tree.isMissingNode()) {
        throw notJson("The body is empty.");
      }
      return tree;
    } catch (JsonProcessingException e) {
      JsonLocation at = e.getLocation();
      String where =
          at == null ? "" : " (line " + at.getLineNr() + ", column " + at.getColumnNr() + ")";
      throw notJson(firstSentence(e.getOriginalMessage()) + where);
    } catch (IOException e) {
      throw notJson("It is not text in UTF-8.");
    }
  }

  private static ProblemException notJson(String detail) {
    return new ProblemException(ProblemType.NOT_JSON, echo(detail, 300));
  }

  private static String firstSentence(String message) {
    String first = message == null ? "" : message.lines().findFirst().orElse("");
    // the parser names its source object here, which tells a sender nothing
    String plain = first.replaceAll("\\s*\\(?(start marker at )?\\[Source:.*", "");
    return plain.isBlank() ? "It cannot be read" : plain;
  }

  /** Why this text cannot be stored, or null when it can. */
  static String fault(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == 0) {
        return "must not contain the character NUL (\\u0000)";
      }
      if (Character.isHighSurrogate(c)
          && i + 1 < text.length()
          && Character.isLowSurrogate(text.charAt(i + 1))) {
        i++;
      } else if (Character.isSurrogate(c)) {
        return "must be valid Unicode; it has half of a surrogate pair";
      }
    }
    return null;
  }

  /** Something that was sent, short and harmless enough to be sent back. */
  static String echo(String text) {
    return echo(text, LONGEST_ECHO);
  }

  private static String echo(String text, int longest) {
    StringBuilder clean = new StringBuilder();
    text.codePoints()
        .limit(longest)
        .map(c -> Character.isISOControl(c) || (c >= 0xD800 && c <= 0xDFFF) ? '?' : c)
        .forEach(clean::appendCodePoint);
    return text.codePointCount(0, text.length()) > longest ? clean + "..." : clean.toString();
  }
}
