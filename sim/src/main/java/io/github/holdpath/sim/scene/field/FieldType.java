package io.github.holdpath.sim.scene.field;

import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a field may hold: reads it, says what would be right, and writes itself as JSON Schema. */
public sealed interface FieldType
    permits QuantityType,
        ExtentType,
        NumberType,
        PercentType,
        NumberListType,
        TextType,
        FlagType,
        ChoiceType,
        DirectionType,
        RoundType,
        ObjectType,
        KindType,
        StepType,
        ListType,
        EitherType,
        OriginsType {
  /**
   * Reads a value.
   *
   * @return the value, or null after at least one fault has been noted
   */
  @Nullable Object read(JsonNode node, FieldSpec field, Faults faults);

  /** Whether the kind of JSON value fits, whatever it holds. */
  boolean accepts(JsonNode node);

  /** What is due, in a sentence: {@code a mass with its unit}. */
  String words();

  /** A clause that shows what would be right where a field has no example. */
  default String right() {
    return "write " + words();
  }

  /**
   * The type as JSON Schema.
   *
   * @param defs takes the schemas of the objects inside, by their names
   */
  Map<String, Object> schema(SchemaDefs defs);

  /** Notes that another kind of value was due. */
  default void mismatch(JsonNode node, FieldSpec field, Faults faults) {
    faults.add(
        node.place(), "must be " + words() + ", but is " + node.words() + "; " + field.right());
  }
}
