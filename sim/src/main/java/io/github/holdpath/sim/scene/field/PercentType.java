package io.github.holdpath.sim.scene.field;

import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.quantity.Amount;
import io.github.holdpath.sim.scene.quantity.Quantity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A percentage above 0 up to 100 as a text, {@code "80 %"}; gives an {@link Amount}. */
public record PercentType() implements FieldType {
  @Override
  public boolean accepts(JsonNode node) {
    return node instanceof JsonNode.Text;
  }

  @Override
  public String words() {
    return "a percentage";
  }

  @Override
  public @Nullable Object read(JsonNode node, FieldSpec field, Faults faults) {
    if (node instanceof JsonNode.Num number) {
      faults.add(
          node.place(), number.shown() + " has no unit; a percentage is a text, " + field.right());
      return null;
    }
    if (!(node instanceof JsonNode.Text text)) {
      mismatch(node, field, faults);
      return null;
    }
    Optional<Quantity> q = Quantity.parse(text.value()).quantity();
    if (q.isEmpty() || !q.get().unit().equals("%") || q.get().numbers().size() != 1) {
      faults.add(node.place(), text.shown() + " is no percentage; " + field.right());
      return null;
    }
    double value = q.get().numbers().get(0);
    if (!(value > 0 && value <= 100)) {
      faults.add(
          node.place(), text.shown() + " must be above 0 %, at most 100 %; " + field.right());
      return null;
    }
    return new Amount(List.of(value / 100), true, text.value().strip());
  }

  @Override
  public Map<String, Object> schema(SchemaDefs defs) {
    Map<String, Object> s = new LinkedHashMap<>();
    s.put("type", "string");
    s.put("pattern", "^[ \\t]*" + Quantity.NUMBER + "[ \\t]*%[ \\t]*$");
    s.put("$comment", "above 0 %, at most 100 %");
    return s;
  }
}
