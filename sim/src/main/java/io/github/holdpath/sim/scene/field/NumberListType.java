package io.github.holdpath.sim.scene.field;

import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.quantity.Bounds;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A list of pure numbers; gives a {@code double[]}.
 *
 * @param count how many
 * @param whole whether only whole numbers fit
 * @param bounds of each
 */
public record NumberListType(int count, boolean whole, Bounds bounds) implements FieldType {
  @Override
  public boolean accepts(JsonNode node) {
    return node instanceof JsonNode.Items;
  }

  @Override
  public String words() {
    return "a list of " + count + (whole ? " whole" : "") + " numbers";
  }

  @Override
  public double @Nullable [] read(JsonNode node, FieldSpec field, Faults faults) {
    if (!(node instanceof JsonNode.Items list)) {
      mismatch(node, field, faults);
      return null;
    }
    if (list.items().size() != count) {
      faults.add(
          node.place(),
          "the list has "
              + list.items().size()
              + " values, but needs "
              + count
              + "; "
              + field.right());
      return null;
    }
    double[] numbers = new double[count];
    int before = faults.count();
    for (int i = 0; i < count; i++) {
      numbers[i] = item(list.items().get(i), field, faults);
    }
    return faults.count() == before ? numbers : null;
  }

  private double item(JsonNode item, FieldSpec field, Faults faults) {
    if (!(item instanceof JsonNode.Num number)) {
      faults.add(
          item.place(), "must be a pure number, but is " + item.words() + "; " + field.right());
      return 0;
    }
    String wrong = NumberType.fault(number, bounds, whole);
    if (!wrong.isEmpty()) {
      faults.add(item.place(), number.shown() + " " + wrong + "; " + field.right());
    }
    return number.value();
  }

  @Override
  public Map<String, Object> schema(SchemaDefs defs) {
    Map<String, Object> item = new LinkedHashMap<>();
    item.put("type", whole ? "integer" : "number");
    item.put("minimum", bounds.least());
    item.put("maximum", bounds.most());
    Map<String, Object> s = new LinkedHashMap<>();
    s.put("type", "array");
    s.put("items", item);
    s.put("minItems", (double) count);
    s.put("maxItems", (double) count);
    return s;
  }
}
