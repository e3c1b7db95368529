package io.github.holdpath.sim.scene.field;

import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.quantity.NearestName;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One of a few words; gives a {@link String}.
 *
 * @param known words
 */
public record ChoiceType(List<String> known) implements FieldType {
  /** Copies the list. */
  public ChoiceType {
    known = List.copyOf(known);
  }

  @Override
  public boolean accepts(JsonNode node) {
    return node instanceof JsonNode.Text;
  }

  @Override
  public String words() {
    return known.size() == 1 ? "\"" + known.get(0) + "\"" : "one of " + String.join(", ", known);
  }

  @Override
  public @Nullable Object read(JsonNode node, FieldSpec field, Faults faults) {
    if (!(node instanceof JsonNode.Text text)) {
      mismatch(node, field, faults);
      return null;
    }
    if (!known.contains(text.value())) {
      faults.add(
          node.place(),
          text.shown()
              + " is not known here; "
              + NearestName.hint(text.value(), known)
              + "known: "
              + String.join(", ", known));
      return null;
    }
    return text.value();
  }

  @Override
  public Map<String, Object> schema(SchemaDefs defs) {
    Map<String, Object> s = new LinkedHashMap<>();
    s.put("enum", known);
    return s;
  }
}
