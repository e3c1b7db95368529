package io.github.holdpath.sim.scene.field;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Gathers the schemas of all kinds of object under their names. */
public final class SchemaDefs {
  private final Map<String, Object> schemas = new LinkedHashMap<>();

  /** JSON text that stands in the schema as it is. */
  public record Raw(String json) {}

  /** A reference to the schema of a kind, which is added if it is new. */
  Map<String, Object> reference(ObjectSpec spec) {
    String key = spec.name().replace(' ', '-');
    if (!schemas.containsKey(key)) {
      schemas.put(key, Map.of());
      schemas.put(key, schema(spec));
    }
    Map<String, Object> s = new LinkedHashMap<>();
    s.put("$ref", "#/$defs/" + key);
    return s;
  }

  /** The schemas by name. */
  public Map<String, Object> all() {
    return schemas;
  }

  /** The schema of an object. */
  public Map<String, Object> schema(ObjectSpec spec) {
    Map<String, Object> properties = new LinkedHashMap<>();
    for (FieldSpec field : spec.fields()) {
      properties.put(field.name(), property(field));
    }
    Map<String, Object> note = new LinkedHashMap<>();
    note.put("description", "A remark; it is not read");
    note.put("type", "string");
    properties.put(Values.NOTE, note);
    Map<String, Object> s = new LinkedHashMap<>();
    s.put("description", sentence(spec.help()));
    s.put("type", "object");
    s.put("properties", properties);
    s.put("required", spec.requiredNames());
    s.put("additionalProperties", false);
    List<Object> groups = new ArrayList<>();
    for (List<String> group : spec.oneOf()) {
      groups.add(Map.of("oneOf", group.stream().map(n -> Map.of("required", List.of(n))).toList()));
    }
    if (!groups.isEmpty()) {
      s.put("allOf", groups);
    }
    return s;
  }

  private Map<String, Object> property(FieldSpec field) {
    Map<String, Object> s = new LinkedHashMap<>();
    s.put("description", sentence(field.help()));
    s.putAll(field.type().schema(this));
    if (!field.example().isEmpty()) {
      s.put("examples", List.of(new Raw(field.example())));
    }
    return s;
  }

  private static String sentence(String phrase) {
    return Character.toUpperCase(phrase.charAt(0)) + phrase.substring(1);
  }
}
