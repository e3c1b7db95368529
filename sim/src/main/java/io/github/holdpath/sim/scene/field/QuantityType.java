package io.github.holdpath.sim.scene.field;

import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.quantity.Amount;
import io.github.holdpath.sim.scene.quantity.Bounds;
import io.github.holdpath.sim.scene.quantity.Dimension;
import io.github.holdpath.sim.scene.quantity.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Numbers with a unit; gives an {@link Amount}.
 *
 * @param dimension of the quantity
 * @param count how many numbers share the unit
 * @param bounds of each number, SI
 * @param percent whether a percentage may stand in place of the quantity
 */
public record QuantityType(Dimension dimension, int count, Bounds bounds, boolean percent)
    implements FieldType {
  private static final String BLANKS = "[ \\t]";

  /** One number. */
  public static QuantityType of(Dimension dimension, Bounds bounds) {
    return new QuantityType(dimension, 1, bounds, false);
  }

  /** Several numbers that share a unit. */
  public static QuantityType list(Dimension dimension, int count, Bounds bounds) {
    return new QuantityType(dimension, count, bounds, false);
  }

  /** One number, or a percentage above 0 up to 100. */
  static QuantityType orPercent(Dimension dimension, Bounds bounds) {
    return new QuantityType(dimension, 1, bounds, true);
  }

  @Override
  public boolean accepts(JsonNode node) {
    return node instanceof JsonNode.Text;
  }

  @Override
  public String words() {
    String unit = count == 1 ? " with its unit" : " in " + count + " numbers with their unit";
    return dimension.words() + unit + (percent ? " or a percentage" : "");
  }

  @Override
  public @Nullable Object read(JsonNode node, FieldSpec field, Faults faults) {
    if (node instanceof JsonNode.Num number) {
      String unit = exampleUnit(field);
      faults.add(
          node.place(),
          number.shown()
              + " has no unit; "
              + (count == 1 ? "write \"" + number.shown() + " " + unit + "\"" : field.right()));
      return null;
    }
    if (!(node instanceof JsonNode.Text text)) {
      mismatch(node, field, faults);
      return null;
    }
    return read(text, field, faults);
  }

  private @Nullable Object read(JsonNode.Text text, FieldSpec field, Faults faults) {
    Quantity.Outcome outcome = Quantity.parse(text.value());
    if (outcome.quantity().isEmpty()) {
      return fault(text, outcome.fault(), field, faults);
    }
    Quantity q = outcome.quantity().get();
    if (q.numbers().size() != count) {
      String numbers = q.numbers().size() == 1 ? " number" : " numbers";
      return fault(
          text, "has " + q.numbers().size() + numbers + ", but needs " + count, field, faults);
    }
    if (percent && q.unit().equals("%")) {
      return percentage(text, q.numbers().get(0), field, faults);
    }
    if (q.unit().isEmpty()) {
      return fault(text, "has no unit", field, faults);
    }
    String wrong = q.unitFault(dimension);
    if (!wrong.isEmpty()) {
      return fault(text, wrong, field, faults);
    }
    return bounded(text, q.toSi(dimension), field, faults);
  }

  private @Nullable Object bounded(
      JsonNode.Text text, double[] si, FieldSpec field, Faults faults) {
    for (double value : si) {
      String wrong = bounds.fault(value, dimension.si());
      if (!wrong.isEmpty()) {
        return fault(text, wrong, field, faults);
      }
    }
    return new Amount(Arrays.stream(si).boxed().toList(), false, text.value().strip());
  }

  private @Nullable Object percentage(
      JsonNode.Text text, double value, FieldSpec field, Faults faults) {
    if (!(value > 0 && value <= 100)) {
      return fault(text, "must be above 0 %, at most 100 %", field, faults);
    }
    return new Amount(List.of(value / 100), true, text.value().strip());
  }

  private static @Nullable Object fault(
      JsonNode.Text text, String wrong, FieldSpec field, Faults faults) {
    faults.add(text.place(), text.shown() + " " + wrong + "; " + field.right());
    return null;
  }

  private String exampleUnit(FieldSpec field) {
    String example = field.example().replace("\"", "");
    return Optional.of(Quantity.parse(example))
        .flatMap(Quantity.Outcome::quantity)
        .map(Quantity::unit)
        .filter(u -> dimension.unit(u).isPresent())
        .orElse(dimension.si());
  }

  @Override
  public Map<String, Object> schema(SchemaDefs defs) {
    Map<String, Object> s = new LinkedHashMap<>();
    s.put("type", "string");
    s.put("pattern", "^" + BLANKS + "*" + pattern() + BLANKS + "*$");
    s.put("$comment", bounds.words(dimension.si()));
    return s;
  }

  /** Numbers and unit as a regular expression without anchors. */
  String pattern() {
    List<String> numbers = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      numbers.add(Quantity.NUMBER);
    }
    List<String> units = new ArrayList<>(dimension.unitNames());
    if (percent) {
      units.add("%");
    }
    return String.join(BLANKS + "+", numbers)
        + BLANKS
        + "*("
        + units.stream()
            .map(u -> u.replace("^", "\\^").replace("*", "\\*"))
            .collect(Collectors.joining("|"))
        + ")";
  }
}
