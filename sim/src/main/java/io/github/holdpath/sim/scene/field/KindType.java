package io.github.holdpath.sim.scene.field;

import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * An object whose field {@code kind} says which fields it has; gives {@link Values}.
 *
 * @param kinds each begins with a choice of one word, its {@code kind}
 */
public record KindType(List<ObjectSpec> kinds) implements FieldType {
  private static final String KIND = "kind";

  /** Copies the list. */
  public KindType {
    kinds = List.copyOf(kinds);
  }

  /** The field that marks a kind. */
  public static FieldSpec kind(String name, String help) {
    return FieldSpec.required(KIND, new ChoiceType(List.of(name)), help, "\"" + name + "\"");
  }

  private static String word(ObjectSpec spec) {
    return ((ChoiceType) spec.field(KIND).orElseThrow().type()).known().get(0);
  }

  private List<String> known() {
    return kinds.stream().map(KindType::word).toList();
  }

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
    return "it begins with \"kind\": " + "\"" + String.join("\" or \"", known()) + "\"";
  }

  @Override
  public @Nullable Object read(JsonNode node, FieldSpec field, Faults faults) {
    if (!(node instanceof JsonNode.Obj obj)) {
      mismatch(node, field, faults);
      return null;
    }
    Optional<JsonNode> kind = obj.get(KIND);
    if (kind.isEmpty()) {
      faults.add(
          node.place().child(KIND),
          "is missing: it says which fields follow; write one of " + String.join(", ", known()));
      return null;
    }
    Object word = new ChoiceType(known()).read(kind.get(), kindField(), faults);
    return kinds.stream()
        .filter(k -> word(k).equals(word))
        .findFirst()
        .map(k -> Values.read(k, obj, faults))
        .orElse(null);
  }

  private FieldSpec kindField() {
    return new FieldSpec(KIND, new ChoiceType(known()), true, "which fields follow", "");
  }

  @Override
  public Map<String, Object> schema(SchemaDefs defs) {
    Map<String, Object> s = new LinkedHashMap<>();
    if (kinds.size() == 1) {
      return defs.reference(kinds.get(0));
    }
    s.put("oneOf", kinds.stream().map(defs::reference).toList());
    return s;
  }
}
