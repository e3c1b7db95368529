package io.github.holdpath.sim.scene.field;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.quantity.Amount;
import io.github.holdpath.sim.scene.quantity.NearestName;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The checked fields of one object. Every field of the file has been read and every fault of a
 * single field noted; a field that is faulty counts as absent, so that what remains can still be
 * judged.
 */
public final class Values {
  /** Name of the field that any object may hold and that is not read. */
  static final String NOTE = "note";

  private final ObjectSpec spec;
  private final JsonNode.Obj node;
  private final Map<String, Object> values = new HashMap<>();

  private Values(ObjectSpec spec, JsonNode.Obj node) {
    this.spec = spec;
    this.node = node;
  }

  /** Reads an object by its spec; notes every fault on the way. */
  public static Values read(ObjectSpec spec, JsonNode.Obj node, Faults faults) {
    Values v = new Values(spec, node);
    Map<String, JsonNode.Member> seen = new HashMap<>();
    for (JsonNode.Member member : node.members()) {
      JsonNode.Member first = seen.putIfAbsent(member.name(), member);
      if (first != null) {
        faults.add(member.place(), twice(first.place()));
      } else if (member.name().equals(NOTE)) {
        note(member.value(), faults);
      } else {
        v.readField(member, faults);
      }
    }
    v.missing(faults);
    return v;
  }

  private void readField(JsonNode.Member member, Faults faults) {
    Optional<FieldSpec> field = spec.field(member.name());
    if (field.isEmpty()) {
      faults.add(
          member.place(),
          "unknown field in "
              + spec.name()
              + "; "
              + NearestName.hint(member.name(), spec.names())
              + "known here: "
              + String.join(", ", spec.names()));
      return;
    }
    Object value = field.get().type().read(member.value(), field.get(), faults);
    if (value != null) {
      values.put(member.name(), value);
    }
  }

  private void missing(Faults faults) {
    for (FieldSpec field : spec.fields()) {
      if (field.required() && !isThere(field.name())) {
        faults.add(
            node.place().child(field.name()), "is missing: " + field.help() + "; " + field.right());
      }
    }
    for (List<String> group : spec.oneOf()) {
      List<String> there = group.stream().filter(this::isThere).toList();
      if (there.isEmpty()) {
        faults.add(
            node.place(),
            group.stream()
                    .map(n -> n + " (" + spec.field(n).orElseThrow().help() + ")")
                    .collect(Collectors.joining(" or ", "one of these is missing: ", "; "))
                + "for example \""
                + group.get(0)
                + "\": "
                + spec.field(group.get(0)).orElseThrow().example());
      } else if (there.size() > 1) {
        faults.add(
            place(there.get(1)),
            "only one of "
                + String.join(", ", group)
                + " may be given; keep one of "
                + String.join(", ", there));
      }
    }
  }

  private static void note(JsonNode value, Faults faults) {
    if (!(value instanceof JsonNode.Text)) {
      faults.add(
          value.place(),
          "a note must be a text, but is " + value.words() + "; write \"note\": \"...\"");
    }
  }

  private static String twice(JsonNode.Place first) {
    return first.line() > 0
        ? "stands twice, first in line "
            + first.line()
            + ", column "
            + first.column()
            + "; keep one of the two"
        : "stands twice; keep one of the two";
  }

  /** The kind of object that this is. */
  public ObjectSpec spec() {
    return spec;
  }

  /** Whether the file has the field, faulty or not. */
  public boolean isThere(String name) {
    return node.get(name).isPresent();
  }

  /** Whether the file has the field, but with a fault that was noted. */
  public boolean isFaulty(String name) {
    return isThere(name) && !values.containsKey(name);
  }

  /** Place of the field's value, or where it would stand. */
  public JsonNode.Place place(String name) {
    return node.get(name).map(JsonNode::place).orElseGet(() -> node.place().child(name));
  }

  /** Place of the object. */
  public JsonNode.Place place() {
    return node.place();
  }

  /** The node of a field, if the file has it. */
  public Optional<JsonNode> node(String name) {
    return node.get(name);
  }

  /** Numbers with a unit. */
  public Optional<Amount> amount(String name) {
    return value(name, Amount.class);
  }

  /** The first number of a quantity in SI, or a pure number. */
  public OptionalDouble number(String name) {
    Object v = raw(name);
    if (v instanceof Amount a) {
      return OptionalDouble.of(a.first());
    }
    return v instanceof Double d ? OptionalDouble.of(d) : OptionalDouble.empty();
  }

  /** A vector in SI, or a direction. */
  public Optional<Vec3> vector(String name) {
    Object v = raw(name);
    if (v instanceof Amount a) {
      return Optional.of(a.vector());
    }
    return v instanceof Vec3 d ? Optional.of(d) : Optional.empty();
  }

  /** A text or a choice. */
  public Optional<String> text(String name) {
    return value(name, String.class);
  }

  /** Pure numbers of a list. */
  public double @Nullable [] numbers(String name) {
    return raw(name) instanceof double[] list ? list.clone() : null;
  }

  /** An object inside this one. */
  public Optional<Values> group(String name) {
    return value(name, Values.class);
  }

  /** The good items of a list of objects; empty also where the field is absent. */
  public List<Values> groups(String name) {
    return items(name, Values.class);
  }

  /** The good items of a list. */
  public <T> List<T> items(String name, Class<T> type) {
    return raw(name) instanceof List<?> list
        ? list.stream().filter(type::isInstance).map(type::cast).toList()
        : List.of();
  }

  /** A value of a special type. */
  public <T> Optional<T> value(String name, Class<T> type) {
    Object v = raw(name);
    return type.isInstance(v) ? Optional.of(type.cast(v)) : Optional.empty();
  }

  private @Nullable Object raw(String name) {
    if (spec.field(name).isEmpty()) {
      throw new IllegalArgumentException(spec.name() + " has no field " + name);
    }
    return values.get(name);
  }
}
