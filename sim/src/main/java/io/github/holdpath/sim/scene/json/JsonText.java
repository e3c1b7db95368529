package io.github.holdpath.sim.scene.json;

import java.util.Locale;

/** Texts as JSON writes them. */
public final class JsonText {
  private JsonText() {}

  /** A text in its quotes, with what JSON or UTF-8 cannot hold as it is written as escapes. */
  public static String quoted(String text) {
    StringBuilder out = new StringBuilder("\"");
    text.codePoints().forEach(c -> escape(c, out));
    return out.append('"').toString();
  }

  private static void escape(int c, StringBuilder out) {
    switch (c) {
      case '"' -> out.append("\\\"");
      case '\\' -> out.append("\\\\");
      case '\n' -> out.append("\\n");
      case '\r' -> out.append("\\r");
      case '\t' -> out.append("\\t");
      default -> {
        // Half a surrogate pair cannot be written in UTF-8.
        if (c < ' ' || (c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE)) {
          out.append(String.format(Locale.ROOT, "\\u%04x", c));
        } else {
          out.appendCodePoint(c);
        }
      }
    }
  }
}
