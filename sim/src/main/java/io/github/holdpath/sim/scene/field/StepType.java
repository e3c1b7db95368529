package io.github.holdpath.sim.scene.field;

import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.quantity.NearestName;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A step of a route: an object whose mark, the first field of its spec, says which kind it is;
 * gives {@link Values}.
 *
 * @param kinds in the order in which their marks are looked for
 */
public record StepType(List<ObjectSpec> kinds) implements FieldType {
  /** Copies the list. */
  public StepType {
    kinds = List.copyOf(kinds);
  }

  private static String mark(ObjectSpec spec) {
    return spec.fields().get(0).name();
  }

  private List<String> marks() {
    return kinds.stream().map(StepType::mark).toList();
  }

  @Override
  public boolean accepts(JsonNode node) {
    return node instanceof JsonNode.Obj;
  }

  @Override
  public String words() {
    return "an object in braces";
  }

  @Override
  public String right() {
    return "a step holds one of " + String.join(", ", marks());
  }

  @Override
  public @Nullable Object read(JsonNode node, FieldSpec field, Faults faults) {
    if (!(node instanceof JsonNode.Obj obj)) {
      faults.add(
          node.place(),
          "a step must be an object in braces, but is "
              + node.words()
              + "; "
              + "for example { \"line\": { \"at\": \"0.9 0 0.5 m\" } }");
      return null;
    }
    for (ObjectSpec kind : kinds) {
      if (obj.get(mark(kind)).isPresent()) {
        return Values.read(kind, obj, faults);
      }
    }
    List<String> names = obj.members().stream().map(JsonNode.Member::name).toList();
    String found = names.isEmpty() ? "nothing" : String.join(", ", names);
    String hint = names.isEmpty() ? "" : NearestName.hint(names.get(0), marks());
    faults.add(
        node.place(),
        "unknown step, it holds "
            + (found.length() > 60 ? found.substring(0, 60) + "..." : found)
            + "; "
            + hint
            + "known steps: "
            + String.join(", ", marks()));
    return null;
  }

  @Override
  public Map<String, Object> schema(SchemaDefs defs) {
    Map<String, Object> s = new LinkedHashMap<>();
    s.put("oneOf", kinds.stream().map(defs::reference).toList());
    return s;
  }
}
