package io.github.holdpath.sim.scene.json;

import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.sim.scene.Scene;
import tools.jackson.core.JacksonException;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;

/** Says in plain words why a text is not JSON. */
final class SyntaxFault {
  private SyntaxFault() {}

  /** A text without a value. */
  static Fault empty(String source) {
    return new Fault(
        source,
        1,
        1,
        "",
        "the file is empty; a scene begins with { \"format\": \"" + Scene.FORMAT + "\"");
  }

  /** A second value after the first. */
  static Fault more(String source, TokenStreamLocation extra, TokenStreamLocation end) {
    return new Fault(
        source,
        extra.getLineNr(),
        extra.getColumnNr(),
        "",
        "there is more after the closing brace in line "
            + end.getLineNr()
            + "; a scene file holds one object and ends with its }");
  }

  /** What the parser refused. */
  static Fault of(String source, String text, JacksonException e) {
    TokenStreamLocation at = e.getLocation();
    int line = at == null ? 0 : Math.max(0, at.getLineNr());
    int column = at == null ? 0 : Math.max(0, at.getColumnNr());
    if (e instanceof StreamConstraintsException) {
      return new Fault(source, line, column, "", limit(String.valueOf(e.getOriginalMessage())));
    }
    int offset = offset(text, line, column);
    return new Fault(source, line, column, "", words(text, offset, e));
  }

  private static String limit(String detail) {
    if (detail.contains("nesting depth")) {
      return "objects and lists are nested more than 500 deep; a scene needs no more than ten"
          + " levels: look for brackets that are never closed";
    }
    if (detail.contains("Number")) {
      return "a number has more than 1000 characters; write it with a few digits, as 0.35 or 1e-6";
    }
    return "a text or a name is too long for a scene; keep each below 20 million characters";
  }

  private static String words(String text, int offset, JacksonException e) {
    String detail = String.valueOf(e.getOriginalMessage());
    String ahead = text.substring(offset);
    char next = ahead.isEmpty() ? 0 : ahead.charAt(0);
    if (detail.contains("end-of-input") || ahead.isEmpty()) {
      return "the text ends too early: a closing \", ] or } is missing before this place";
    }
    if (detail.contains("eading zero")) {
      return "a number begins with a needless 0; write 7, not 007";
    }
    if (isNumberWord(text, offset)) {
      return "NaN and Infinity are not numbers that a scene can hold; write a finite number, as"
          + " 0.35";
    }
    if (next == '/' || next == '#') {
      return "JSON has no comments; put the remark into a field: \"note\": \"...\"";
    }
    if (next == '}' || next == ']') {
      return before(text, offset) == ','
          ? "a comma stands before " + next + "; take the comma out"
          : "a "
              + next
              + " stands here where "
              + expected(detail)
              + "; look for the bracket that"
              + " it should close";
    }
    if (next == '\'') {
      return "texts and names stand in double quotes; write \" in place of '";
    }
    if (next < ' ' || detail.contains("CTRL-CHAR")) {
      return "a text is not closed in its line; put a \" at its end (a line break inside a text"
          + " is written \\n)";
    }
    if (detail.contains("escape")) {
      return "an unknown \\ escape; write \\\\ for one backslash, or / in paths of files";
    }
    if (detail.contains("colon")) {
      return "a colon is missing after the name of a field; write \"name\": value";
    }
    if (detail.contains("separate")) {
      return "a comma is missing before this place; put one between two fields or two list items";
    }
    if (detail.contains("field name") || detail.contains("property name")) {
      return "the name of a field must stand in double quotes; write \"name\": value";
    }
    return bare(next, detail);
  }

  private static String bare(char next, String detail) {
    if (Character.isLetter(next) || detail.contains("Unrecognized token")) {
      return "a word stands here without quotes; put it into double quotes, or write a number,"
          + " true or false";
    }
    if (next == '.' || next == '+' || next == ',' || detail.contains("numeric")) {
      return "not a number as JSON writes it; write 0.5, not .5, +0.5, 0,5 or 5.";
    }
    return "the character "
        + next
        + " cannot stand here; a value is a text in double quotes, a"
        + " number, a list in [ ] or an object in { }";
  }

  private static String expected(String detail) {
    return detail.contains("close marker") ? "another bracket is open" : "a value is due";
  }

  private static boolean isNumberWord(String text, int offset) {
    int from = offset;
    while (from > 0 && isWordPart(text.charAt(from - 1))) {
      from--;
    }
    String word = text.substring(from, Math.min(text.length(), from + 10));
    return word.startsWith("NaN") || word.startsWith("Inf") || word.startsWith("-Inf");
  }

  private static boolean isWordPart(char c) {
    return Character.isLetter(c) || c == '-' || c == '+';
  }

  private static char before(String text, int offset) {
    int i = offset - 1;
    while (i >= 0 && Character.isWhitespace(text.charAt(i))) {
      i--;
    }
    return i < 0 ? 0 : text.charAt(i);
  }

  private static int offset(String text, int line, int column) {
    int at = 0;
    for (int l = 1; l < line; l++) {
      int next = nextLine(text, at);
      if (next < 0) {
        break;
      }
      at = next;
    }
    return Math.min(text.length(), Math.max(0, at + column - 1));
  }

  private static int nextLine(String text, int from) {
    for (int i = from; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\n') {
        return i + 1;
      }
      if (c == '\r') {
        return i + 1 < text.length() && text.charAt(i + 1) == '\n' ? i + 2 : i + 1;
      }
    }
    return -1;
  }
}
