package io.github.holdpath.sim.scene.field;

import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Yes or no, as {@code true} and {@code false}; gives a {@link Boolean}. */
public record FlagType() implements FieldType {
  @Override
  public boolean accepts(JsonNode node) {
    return node instanceof JsonNode.Word word && !word.text().equals("null");
  }

  @Override
  public String words() {
    return "true or false";
  }

  @Override
  public @Nullable Object read(JsonNode node, FieldSpec field, Faults faults) {
    if (node instanceof JsonNode.Word word && accepts(node)) {
      return word.text().equals("true");
    }
    mismatch(node, field, faults);
    return null;
  }

  @Override
  public Map<String, Object> schema(SchemaDefs defs) {
    return Map.of("type", "boolean");
  }
}
