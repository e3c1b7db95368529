package io.github.holdpath.sim.scene.field;

import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A list; gives a {@link List} of its good items.
 *
 * @param item type of each
 * @param least number of items
 * @param most number of items
 */
public record ListType(FieldType item, int least, int most) implements FieldType {
  @Override
  public boolean accepts(JsonNode node) {
    return node instanceof JsonNode.Items;
  }

  @Override
  public String words() {
    return "a list in brackets";
  }

  @Override
  public @Nullable Object read(JsonNode node, FieldSpec field, Faults faults) {
    if (!(node instanceof JsonNode.Items list)) {
      mismatch(node, field, faults);
      return null;
    }
    int size = list.items().size();
    if (size < least || size > most) {
      faults.add(
          node.place(),
          "the list has "
              + (size == 0 ? "no" : Integer.toString(size))
              + " items, but needs "
              + (size < least ? "at least " + least : "at most " + most)
              + "; "
              + field.right());
      return null;
    }
    List<Object> good = new ArrayList<>();
    FieldSpec each = new FieldSpec(field.name(), item, true, field.help(), "");
    for (JsonNode one : list.items()) {
      Object value = item.read(one, each, faults);
      if (value != null) {
        good.add(value);
      }
    }
    return good;
  }

  @Override
  public Map<String, Object> schema(SchemaDefs defs) {
    Map<String, Object> s = new LinkedHashMap<>();
    s.put("type", "array");
    s.put("items", item.schema(defs));
    s.put("minItems", (double) least);
    s.put("maxItems", (double) most);
    return s;
  }
}
