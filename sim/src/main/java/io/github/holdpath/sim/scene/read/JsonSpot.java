package io.github.holdpath.sim.scene.read;

import io.github.holdpath.sim.scene.json.JsonNode.Place;

/** Finds nodes again in the text they came from, so that it can be changed at that place alone. */
final class JsonSpot {
  private final String text;

  /** In a text without byte-order mark that has been read as JSON. */
  JsonSpot(String text) {
    this.text = text;
  }

  /** Where a place begins, as a count of characters. */
  int from(Place place) {
    int at = 0;
    for (int line = 1; line < place.line(); line++) {
      while (text.charAt(at) != '\n' && text.charAt(at) != '\r') {
        at++;
      }
      at += text.startsWith("\r\n", at) ? 2 : 1;
    }
    return at + place.column() - 1;
  }

  /** Where the value that begins there ends. */
  int to(int from) {
    char first = text.charAt(from);
    if (first == '"') {
      return text(from);
    }
    if (first == '{' || first == '[') {
      return bracketed(from);
    }
    int at = from;
    while (at < text.length() && ",]} \t\r\n".indexOf(text.charAt(at)) < 0) {
      at++;
    }
    return at;
  }

  private int text(int from) {
    int at = from + 1;
    while (text.charAt(at) != '"') {
      at += text.charAt(at) == '\\' ? 2 : 1;
    }
    return at + 1;
  }

  private int bracketed(int from) {
    int depth = 0;
    int at = from;
    do {
      char c = text.charAt(at);
      if (c == '"') {
        at = text(at);
        continue;
      }
      depth += c == '{' || c == '[' ? 1 : c == '}' || c == ']' ? -1 : 0;
      at++;
    } while (depth > 0);
    return at;
  }

  /** The blanks before a place, if nothing else stands before it in its line. */
  String indent(int from) {
    int start = from;
    while (start > 0 && (text.charAt(start - 1) == ' ' || text.charAt(start - 1) == '\t')) {
      start--;
    }
    boolean alone = start > 0 && (text.charAt(start - 1) == '\n' || text.charAt(start - 1) == '\r');
    return alone ? "\n" + text.substring(start, from) : " ";
  }
}
