package io.github.holdpath.sim.scene.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One kind of object of a scene file.
 *
 * @param name of the kind, unique among all
 * @param help what it is for, a phrase without a full stop
 * @param fields that it may have, besides {@code note}
 * @param oneOf groups of fields of which exactly one must be there
 */
public record ObjectSpec(
    String name, String help, List<FieldSpec> fields, List<List<String>> oneOf) {
  /** Copies the lists. */
  public ObjectSpec {
    fields = List.copyOf(fields);
    oneOf = List.copyOf(oneOf);
  }

  /** A kind without alternatives. */
  public static ObjectSpec of(String name, String help, FieldSpec... fields) {
    return new ObjectSpec(name, help, List.of(fields), List.of());
  }

  /** This kind with one more group of which exactly one field must be there. */
  public ObjectSpec exactlyOne(String... names) {
    List<List<String>> groups = new ArrayList<>(oneOf);
    groups.add(List.of(names));
    return new ObjectSpec(name, help, fields, groups);
  }

  /** This kind with more fields behind its own. */
  public ObjectSpec with(FieldSpec... more) {
    List<FieldSpec> all = new ArrayList<>(fields);
    all.addAll(List.of(more));
    return new ObjectSpec(name, help, all, oneOf);
  }

  /** The field of that name. */
  public Optional<FieldSpec> field(String wanted) {
    return fields.stream().filter(f -> f.name().equals(wanted)).findFirst();
  }

  /** Names of the fields. */
  public List<String> names() {
    return fields.stream().map(FieldSpec::name).toList();
  }

  /** Names of the fields that must be there. */
  List<String> requiredNames() {
    return fields.stream().filter(FieldSpec::required).map(FieldSpec::name).toList();
  }
}
