package io.github.holdpath.sim.scene.field;

import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * An object of one kind; gives {@link Values}.
 *
 * @param spec of the kind
 */
public record ObjectType(ObjectSpec spec) implements FieldType {
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
    return spec.requiredNames().isEmpty()
        ? "it may hold " + String.join(", ", spec.names())
        : "it needs " + String.join(", ", spec.requiredNames());
  }

  @Override
  public @Nullable Object read(JsonNode node, FieldSpec field, Faults faults) {
    if (!(node instanceof JsonNode.Obj obj)) {
      mismatch(node, field, faults);
      return null;
    }
    return Values.read(spec, obj, faults);
  }

  @Override
  public Map<String, Object> schema(SchemaDefs defs) {
    return defs.reference(spec);
  }
}
