package io.github.holdpath.sim.scene.read;

import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.json.JsonNode.Member;
import io.github.holdpath.sim.scene.json.JsonNode.Place;
import io.github.holdpath.sim.scene.json.JsonTree;
import io.github.holdpath.sim.scene.json.Pointers;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Puts the values of {@code --set POINTER=VALUE} into a scene before it is checked. */
final class SceneEdits {
  private static final String JSON_NUMBER = "-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][+-]?[0-9]+)?";

  private SceneEdits() {}

  /**
   * The scene with all values set; those that cannot be set are noted as faults.
   *
   * @param set values by pointer, in the order in which they are set
   */
  static JsonNode apply(JsonNode root, Map<String, String> set, Faults faults) {
    JsonNode edited = root;
    for (Map.Entry<String, String> e : set.entrySet()) {
      String pointer = e.getKey();
      Place place = new Place("--set " + pointer + "=" + e.getValue(), 0, 0, pointer);
      if (pointer.isEmpty() || pointer.startsWith("/")) {
        faults.add(
            place, "a pointer is the way to one field without a slash in front, as grip/friction");
        continue;
      }
      try {
        JsonNode value = value(place, e.getValue());
        edited = put(edited, Pointers.steps(pointer), 0, value, place, faults);
      } catch (SceneException x) {
        faults.add(place, "begins like JSON but is not: " + x.faults().get(0).message());
      }
    }
    return edited;
  }

  private static JsonNode value(Place place, String text) throws SceneException {
    return isJson(text)
        ? placed(JsonTree.parse(place.source(), text.strip(), place.pointer()), place.source())
        : new JsonNode.Text(place, text);
  }

  /** Whether a value is taken as JSON; if not, it is a text as it stands. */
  static boolean isJson(String text) {
    String t = text.strip();
    return t.matches(JSON_NUMBER)
        || t.equals("true")
        || t.equals("false")
        || t.startsWith("\"")
        || t.startsWith("[")
        || t.startsWith("{");
  }

  /** The value without lines and columns, which would be those of the option. */
  private static JsonNode placed(JsonNode node, String source) {
    Place place = new Place(source, 0, 0, node.place().pointer());
    if (node instanceof JsonNode.Obj obj) {
      return new JsonNode.Obj(
          place,
          obj.members().stream()
              .map(
                  m ->
                      new Member(
                          m.name(),
                          new Place(source, 0, 0, m.place().pointer()),
                          placed(m.value(), source)))
              .toList());
    }
    if (node instanceof JsonNode.Items list) {
      return new JsonNode.Items(
          place, list.items().stream().map(item -> placed(item, source)).toList());
    }
    if (node instanceof JsonNode.Text t) {
      return new JsonNode.Text(place, t.value());
    }
    return node instanceof JsonNode.Num n
        ? new JsonNode.Num(place, n.text())
        : new JsonNode.Word(place, ((JsonNode.Word) node).text());
  }

  private static JsonNode put(
      JsonNode node, List<String> steps, int depth, JsonNode value, Place place, Faults faults) {
    if (depth == steps.size()) {
      return value;
    }
    String step = steps.get(depth);
    if (node instanceof JsonNode.Items list) {
      int i = Pointers.index(step);
      if (i < 0 || i >= list.items().size()) {
        faults.add(
            place,
            node.place().pointer()
                + " has "
                + list.items().size()
                + " items; write an index from"
                + " 0 to "
                + (list.items().size() - 1));
        return node;
      }
      List<JsonNode> items = new ArrayList<>(list.items());
      items.set(i, put(items.get(i), steps, depth + 1, value, place, faults));
      return new JsonNode.Items(list.place(), items);
    }
    if (!(node instanceof JsonNode.Obj obj)) {
      faults.add(
          place,
          node.place().pointer()
              + " is "
              + node.words()
              + ", so it has no field "
              + step
              + "; set "
              + node.place().pointer()
              + " itself");
      return node;
    }
    return member(obj, steps, depth, value, place, faults);
  }

  private static JsonNode member(
      JsonNode.Obj obj, List<String> steps, int depth, JsonNode value, Place place, Faults faults) {
    String step = steps.get(depth);
    List<Member> members = new ArrayList<>(obj.members());
    for (int i = 0; i < members.size(); i++) {
      Member m = members.get(i);
      if (m.name().equals(step)) {
        JsonNode inner = put(m.value(), steps, depth + 1, value, place, faults);
        members.set(i, new Member(step, m.place(), inner));
        return new JsonNode.Obj(obj.place(), members);
      }
    }
    Place at = new Place(place.source(), 0, 0, Pointers.join(obj.place().pointer(), step));
    JsonNode fresh = new JsonNode.Obj(at, List.of());
    members.add(new Member(step, at, put(fresh, steps, depth + 1, value, place, faults)));
    return new JsonNode.Obj(obj.place(), members);
  }
}
