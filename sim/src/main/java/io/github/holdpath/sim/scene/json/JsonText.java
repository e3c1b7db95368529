package io.github.holdpath.sim.scene.json;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Nodes as JSON text, laid out as one would write a scene by hand: what is short stands in one
 * line, and each group of the whole in lines of its own. Numbers stay as they were written.
 */
public final class JsonText {
  /** Longest line that is made of a whole list or object, characters. */
  private static final int WIDTH = 105;

  private static final String INDENT = "  ";

  private JsonText() {}

  /** In one line. */
  public static String line(JsonNode node) {
    if (node instanceof JsonNode.Text t) {
      return quote(t.value());
    }
    if (node instanceof JsonNode.Num n) {
      return n.text();
    }
    if (node instanceof JsonNode.Word w) {
      return w.text();
    }
    if (node instanceof JsonNode.Items list) {
      String gap = list.items().stream().allMatch(JsonText::simple) ? "" : " ";
      return list.items().stream()
          .map(JsonText::line)
          .collect(Collectors.joining(", ", "[" + gap, gap + "]"));
    }
    List<JsonNode.Member> members = ((JsonNode.Obj) node).members();
    return members.isEmpty()
        ? "{}"
        : members.stream()
            .map(m -> quote(m.name()) + ": " + line(m.value()))
            .collect(Collectors.joining(", ", "{ ", " }"));
  }

  /** In lines, the last one closed. */
  public static String pretty(JsonNode root) {
    StringBuilder out = new StringBuilder();
    write(root, 0, 1, out);
    return out.append('\n').toString();
  }

  /**
   * Writes a value.
   *
   * @param depth of lists and objects about it
   * @param taken characters of its line that are not its own
   */
  private static void write(JsonNode node, int depth, int taken, StringBuilder out) {
    String line = line(node);
    if (simple(node) || (compact(node, depth) && taken + line.length() <= WIDTH)) {
      out.append(line);
      return;
    }
    String indent = "\n" + INDENT.repeat(depth + 1);
    int inner = INDENT.length() * (depth + 1) + 1;
    boolean object = node instanceof JsonNode.Obj;
    out.append(object ? '{' : '[');
    String comma = "";
    if (node instanceof JsonNode.Obj obj) {
      for (JsonNode.Member m : obj.members()) {
        String name = quote(m.name()) + ": ";
        out.append(comma).append(indent).append(name);
        write(m.value(), depth + 1, inner + name.length(), out);
        comma = ",";
      }
    } else {
      for (JsonNode item : ((JsonNode.Items) node).items()) {
        out.append(comma).append(indent);
        write(item, depth + 1, inner, out);
        comma = ",";
      }
    }
    out.append("\n").append(INDENT.repeat(depth)).append(object ? '}' : ']');
  }

  /** Whether a list or object may stand in one line, if there is room. */
  private static boolean compact(JsonNode node, int depth) {
    if (node instanceof JsonNode.Items list) {
      return list.items().size() < 2 || list.items().stream().allMatch(JsonText::simple);
    }
    List<JsonNode.Member> members = ((JsonNode.Obj) node).members();
    return members.isEmpty()
        || (depth > 0 && (depth > 1 || members.stream().allMatch(m -> simple(m.value()))));
  }

  private static boolean simple(JsonNode node) {
    return !(node instanceof JsonNode.Obj || node instanceof JsonNode.Items);
  }

  private static String quote(String text) {
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
