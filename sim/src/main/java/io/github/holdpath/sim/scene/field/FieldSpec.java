package io.github.holdpath.sim.scene.field;

/**
 * One field of an object: the single home of its name, what it is for and what it may hold. Known
 * names, hints, messages and the published schema all come from here.
 *
 * @param name in the file
 * @param type what it may hold
 * @param required whether it must be there
 * @param help what it is for, a phrase without a full stop
 * @param example JSON text of a good value, empty where the type tells enough
 */
public record FieldSpec(
    String name, FieldType type, boolean required, String help, String example) {
  /** A field that must be there. */
  public static FieldSpec required(String name, FieldType type, String help, String example) {
    return new FieldSpec(name, type, true, help, example);
  }

  /** A field that may be left out. */
  public static FieldSpec optional(String name, FieldType type, String help, String example) {
    return new FieldSpec(name, type, false, help, example);
  }

  /** A clause that shows what would be right. */
  public String right() {
    return example.isEmpty() ? type.right() : "for example " + example;
  }
}
