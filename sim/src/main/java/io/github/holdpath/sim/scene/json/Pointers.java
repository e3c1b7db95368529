package io.github.holdpath.sim.scene.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** JSON Pointers (RFC 6901) without their leading slash, as {@code route/3/speed}. */
public final class Pointers {
  private Pointers() {}

  /** The pointer of a member or item. */
  public static String join(String pointer, String name) {
    String step = name.replace("~", "~0").replace("/", "~1");
    return pointer.isEmpty() ? step : pointer + "/" + step;
  }

  /** The steps of a pointer, escapes undone. */
  public static List<String> steps(String pointer) {
    List<String> steps = new ArrayList<>();
    int from = 0;
    for (int slash = pointer.indexOf('/'); slash >= 0; slash = pointer.indexOf('/', from)) {
      steps.add(unescape(pointer.substring(from, slash)));
      from = slash + 1;
    }
    steps.add(unescape(pointer.substring(from)));
    return List.copyOf(steps);
  }

  /** The value at a pointer, if there is one. */
  public static Optional<JsonNode> find(JsonNode root, String pointer) {
    Optional<JsonNode> at = Optional.of(root);
    for (String step : steps(pointer)) {
      at = at.flatMap(node -> child(node, step));
    }
    return at;
  }

  private static Optional<JsonNode> child(JsonNode node, String step) {
    if (node instanceof JsonNode.Obj obj) {
      return obj.get(step);
    }
    if (node instanceof JsonNode.Items list) {
      int i = index(step);
      return i >= 0 && i < list.items().size()
          ? Optional.of(list.items().get(i))
          : Optional.empty();
    }
    return Optional.empty();
  }

  /** The index that a step names, or -1 if it names none. */
  public static int index(String step) {
    return step.matches("0|[1-9][0-9]{0,6}") ? Integer.parseInt(step) : -1;
  }

  private static String unescape(String step) {
    return step.replace("~1", "/").replace("~0", "~");
  }
}
