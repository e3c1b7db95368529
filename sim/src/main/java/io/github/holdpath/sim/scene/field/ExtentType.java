package io.github.holdpath.sim.scene.field;

import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.quantity.Bounds;
import io.github.holdpath.sim.scene.quantity.Dimension;
import io.github.holdpath.sim.scene.quantity.Quantity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The size of a flat shape: one length, a diameter, or two, its sides; gives an {@link
 * io.github.holdpath.sim.scene.quantity.Amount}.
 *
 * @param bounds of each length, m
 */
public record ExtentType(Bounds bounds) implements FieldType {
  private QuantityType lengths(int count) {
    return QuantityType.list(Dimension.LENGTH, count, bounds);
  }

  @Override
  public boolean accepts(JsonNode node) {
    return node instanceof JsonNode.Text;
  }

  @Override
  public String words() {
    return "one or two lengths with their unit";
  }

  @Override
  public @Nullable Object read(JsonNode node, FieldSpec field, Faults faults) {
    boolean one =
        node instanceof JsonNode.Text text
            && Quantity.parse(text.value())
                .quantity()
                .filter(q -> q.numbers().size() == 1)
                .isPresent();
    return lengths(one ? 1 : 2).read(node, field, faults);
  }

  @Override
  public Map<String, Object> schema(SchemaDefs defs) {
    Map<String, Object> s = new LinkedHashMap<>();
    s.put("anyOf", List.of(lengths(1).schema(defs), lengths(2).schema(defs)));
    return s;
  }
}
