package io.github.holdpath.sim.scene.field;

import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.quantity.Amount;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Lengths with a unit and the axis of a round body, {@code "50 300 mm x"}; gives a {@link
 * RoundType.Size}.
 *
 * @param lengths with their unit
 */
public record RoundType(QuantityType lengths) implements FieldType {
  private static final String AXES = "xyz";

  /**
   * What was read.
   *
   * @param lengths in m, in the order of the text
   * @param axis 0, 1 or 2: along x, y or z
   */
  public record Size(Amount lengths, int axis) {}

  @Override
  public boolean accepts(JsonNode node) {
    return node instanceof JsonNode.Text;
  }

  @Override
  public String words() {
    return "a text with " + lengths.count() + " lengths, their unit and the axis x, y or z";
  }

  @Override
  public @Nullable Object read(JsonNode node, FieldSpec field, Faults faults) {
    if (!(node instanceof JsonNode.Text text)) {
      mismatch(node, field, faults);
      return null;
    }
    String value = text.value().strip();
    int last = value.length() - 1;
    int axis = last > 0 && value.charAt(last - 1) == ' ' ? AXES.indexOf(value.charAt(last)) : -1;
    if (axis < 0) {
      faults.add(
          node.place(), text.shown() + " does not end with its axis x, y or z; " + field.right());
      return null;
    }
    JsonNode.Text front = new JsonNode.Text(text.place(), value.substring(0, last));
    Object amount = lengths.read(front, field, faults);
    return amount instanceof Amount a ? new Size(a, axis) : null;
  }

  @Override
  public Map<String, Object> schema(SchemaDefs defs) {
    Map<String, Object> s = new LinkedHashMap<>();
    s.put("type", "string");
    s.put("pattern", "^[ \\t]*" + lengths.pattern() + "[ \\t]+[xyz][ \\t]*$");
    return s;
  }
}
