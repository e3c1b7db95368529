package io.github.holdpath.sim.scene.field;

import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One of several types, told apart by the kind of JSON value or by a word that only one knows.
 *
 * @param types tried in this order
 */
public record EitherType(List<FieldType> types) implements FieldType {
  /** Copies the list. */
  public EitherType {
    types = List.copyOf(types);
  }

  @Override
  public boolean accepts(JsonNode node) {
    return types.stream().anyMatch(t -> t.accepts(node));
  }

  @Override
  public String words() {
    return types.stream().map(FieldType::words).collect(Collectors.joining(", or "));
  }

  @Override
  public @Nullable Object read(JsonNode node, FieldSpec field, Faults faults) {
    FieldType fits = null;
    for (FieldType type : types) {
      if (type.accepts(node) && (fits == null || begins(type, node))) {
        fits = type;
      }
    }
    if (fits == null) {
      fits = numberFor(node);
    }
    if (fits == null) {
      mismatch(node, field, faults);
      return null;
    }
    return fits.read(node, field, faults);
  }

  /** The number among the types, if a text is meant as one: it tells best what is wrong with it. */
  private @Nullable FieldType numberFor(JsonNode node) {
    boolean meant =
        node instanceof JsonNode.Text text && text.value().matches("\\s*[-+]?[0-9](?s:.*)");
    return meant
        ? types.stream().filter(NumberType.class::isInstance).findFirst().orElse(null)
        : null;
  }

  /** Whether a text is meant as one of the words of a choice: it begins with a letter. */
  private static boolean begins(FieldType type, JsonNode node) {
    return type instanceof ChoiceType
        && node instanceof JsonNode.Text text
        && text.value().matches("\\s*\\p{Alpha}(?s:.*)");
  }

  @Override
  public Map<String, Object> schema(SchemaDefs defs) {
    Map<String, Object> s = new LinkedHashMap<>();
    s.put("anyOf", types.stream().map(t -> t.schema(defs)).toList());
    return s;
  }
}
