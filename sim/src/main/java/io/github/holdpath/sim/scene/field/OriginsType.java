package io.github.holdpath.sim.scene.field;

import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Where values come from: an object with a pointer for each name; gives {@link
 * OriginsType.Origins}.
 */
public record OriginsType() implements FieldType {
  /** Origins that a file may state. */
  static final List<String> KNOWN =
      Stream.of(Scene.Origin.values())
          .filter(o -> o != Scene.Origin.NOT_STATED)
          .map(Scene.Origin::label)
          .toList();

  /**
   * What was read.
   *
   * @param entries in the order of the file
   */
  public record Origins(List<Entry> entries) {
    /** Copies the list. */
    public Origins {
      entries = List.copyOf(entries);
    }
  }

  /**
   * One origin.
   *
   * @param place of its key
   * @param pointer of the value
   * @param origin of the value
   */
  public record Entry(JsonNode.Place place, String pointer, Scene.Origin origin) {}

  @Override
  public boolean accepts(JsonNode node) {
    return node instanceof JsonNode.Obj;
  }

  @Override
  public String words() {
    return "an object in braces";
  }

  @Override
  public @Nullable Object read(JsonNode node, FieldSpec field, Faults faults) {
    if (!(node instanceof JsonNode.Obj obj)) {
      mismatch(node, field, faults);
      return null;
    }
    List<Entry> entries = new ArrayList<>();
    Map<String, JsonNode.Place> seen = new LinkedHashMap<>();
    for (JsonNode.Member member : obj.members()) {
      JsonNode.Place first = seen.putIfAbsent(member.name(), member.place());
      if (first != null) {
        faults.add(
            member.place(),
            "stands twice, first in line " + first.line() + "; keep one of the two");
      } else if (!member.name().equals(Values.NOTE)) {
        Object word = new ChoiceType(KNOWN).read(member.value(), field, faults);
        Stream.of(Scene.Origin.values())
            .filter(o -> o.label().equals(word))
            .forEach(o -> entries.add(new Entry(member.place(), member.name(), o)));
      }
    }
    return new Origins(entries);
  }

  @Override
  public Map<String, Object> schema(SchemaDefs defs) {
    Map<String, Object> s = new LinkedHashMap<>();
    s.put("type", "object");
    s.put("properties", Map.of(Values.NOTE, Map.of("type", "string")));
    s.put("additionalProperties", new ChoiceType(KNOWN).schema(defs));
    return s;
  }
}
