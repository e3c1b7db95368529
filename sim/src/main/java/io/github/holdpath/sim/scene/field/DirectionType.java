package io.github.holdpath.sim.scene.field;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.quantity.Quantity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A direction as three pure numbers in a text, {@code "0 0 1"}; gives a {@link Vec3}. */
public record DirectionType() implements FieldType {
  private static final double LEAST = 1e-6;
  private static final double MOST = 1e6;

  @Override
  public boolean accepts(JsonNode node) {
    return node instanceof JsonNode.Text;
  }

  @Override
  public String words() {
    return "a direction as three numbers in a text";
  }

  @Override
  public @Nullable Object read(JsonNode node, FieldSpec field, Faults faults) {
    if (!(node instanceof JsonNode.Text text)) {
      mismatch(node, field, faults);
      return null;
    }
    Quantity.Outcome outcome = Quantity.parse(text.value());
    String wrong = outcome.fault();
    if (outcome.quantity().isPresent()) {
      Quantity q = outcome.quantity().get();
      wrong = fault(q.numbers(), q.unit());
      if (wrong.isEmpty()) {
        return new Vec3(q.numbers().get(0), q.numbers().get(1), q.numbers().get(2));
      }
    }
    faults.add(node.place(), text.shown() + " " + wrong + "; " + field.right());
    return null;
  }

  private static String fault(List<Double> numbers, String unit) {
    if (!unit.isEmpty()) {
      return "has a unit, but a direction has none";
    }
    if (numbers.size() != 3) {
      return "has " + numbers.size() + " numbers, but a direction needs 3";
    }
    double largest = numbers.stream().mapToDouble(Math::abs).max().orElse(0);
    if (largest < LEAST) {
      return "has no direction, as all three numbers are 0";
    }
    return largest > MOST ? "holds a number above 1000000" : "";
  }

  @Override
  public Map<String, Object> schema(SchemaDefs defs) {
    String n = Quantity.NUMBER;
    Map<String, Object> s = new LinkedHashMap<>();
    s.put("type", "string");
    s.put("pattern", "^[ \\t]*" + n + "[ \\t]+" + n + "[ \\t]+" + n + "[ \\t]*$");
    return s;
  }
}
