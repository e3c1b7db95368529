package io.github.holdpath.sim.scene.field;

import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.quantity.Bounds;
import io.github.holdpath.sim.scene.quantity.Quantity;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A pure number; gives a {@link Double}.
 *
 * @param bounds where it must lie
 * @param whole whether only whole numbers fit
 */
public record NumberType(Bounds bounds, boolean whole) implements FieldType {
  /** Any number within the bounds. */
  public static NumberType of(Bounds bounds) {
    return new NumberType(bounds, false);
  }

  @Override
  public boolean accepts(JsonNode node) {
    return node instanceof JsonNode.Num;
  }

  @Override
  public String words() {
    return whole ? "a whole number" : "a pure number";
  }

  @Override
  public @Nullable Object read(JsonNode node, FieldSpec field, Faults faults) {
    if (node instanceof JsonNode.Text text) {
      faults.add(node.place(), text.shown() + " " + textFault(text.value()) + "; " + field.right());
      return null;
    }
    if (!(node instanceof JsonNode.Num number)) {
      mismatch(node, field, faults);
      return null;
    }
    String wrong = fault(number, bounds, whole);
    if (!wrong.isEmpty()) {
      faults.add(node.place(), number.shown() + " " + wrong + "; " + field.right());
      return null;
    }
    return number.value();
  }

  private static String textFault(String value) {
    if (value.strip().endsWith("%")) {
      return "is a percentage, but a pure number is due, 0.5 for 50 %";
    }
    return value.strip().matches(Quantity.NUMBER)
        ? "stands in quotes; a pure number stands without"
        : "is a text, but a pure number without unit is due";
  }

  /** Why a number does not fit, empty if it does. */
  static String fault(JsonNode.Num number, Bounds bounds, boolean whole) {
    double value = number.value();
    if (!Double.isFinite(value)) {
      return "is beyond all bounds; it must be " + bounds.words("");
    }
    if (whole && value != Math.rint(value)) {
      return "must be a whole number";
    }
    return bounds.fault(value, "");
  }

  @Override
  public Map<String, Object> schema(SchemaDefs defs) {
    Map<String, Object> s = new LinkedHashMap<>();
    s.put("type", whole ? "integer" : "number");
    s.put(bounds.open() ? "exclusiveMinimum" : "minimum", bounds.least());
    s.put("maximum", bounds.most());
    return s;
  }
}
