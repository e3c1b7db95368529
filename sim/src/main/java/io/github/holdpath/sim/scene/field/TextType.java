package io.github.holdpath.sim.scene.field;

import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A text that is not blank; gives a {@link String}. */
public record TextType() implements FieldType {
  @Override
  public boolean accepts(JsonNode node) {
    return node instanceof JsonNode.Text;
  }

  @Override
  public String words() {
    return "a text";
  }

  @Override
  public @Nullable Object read(JsonNode node, FieldSpec field, Faults faults) {
    if (!(node instanceof JsonNode.Text text)) {
      mismatch(node, field, faults);
      return null;
    }
    if (text.value().isBlank()) {
      faults.add(node.place(), "is empty; " + field.right());
      return null;
    }
    return text.value().strip();
  }

  @Override
  public Map<String, Object> schema(SchemaDefs defs) {
    Map<String, Object> s = new LinkedHashMap<>();
    s.put("type", "string");
    s.put("pattern", "\\S");
    return s;
  }
}
