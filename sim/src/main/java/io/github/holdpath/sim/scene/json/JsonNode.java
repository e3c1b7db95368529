package io.github.holdpath.sim.scene.json;

import java.util.List;
import java.util.Optional;

/** A value of a JSON text with the place where it stands. */
public sealed interface JsonNode {
  /** Where the value begins. */
  Place place();

  /** What it is, in a user's words. */
  String words();

  /**
   * The value as a user would recognise it in a message: shortened, objects and lists by name only.
   */
  String shown();

  /**
   * Where a value stands.
   *
   * @param source file as the user named it, or the option that gave the value
   * @param line from 1, or 0 where no place applies
   * @param column from 1, or 0 where no place applies
   * @param pointer JSON Pointer without its leading slash
   */
  record Place(String source, int line, int column, String pointer) {
    /** The place of a member or item that is not there: the same spot, a longer pointer. */
    public Place child(String name) {
      return new Place(source, line, column, Pointers.join(pointer, name));
    }
  }

  /** A text in quotes. */
  record Text(Place place, String value) implements JsonNode {
    private static final int SHOWN = 60;

    @Override
    public String words() {
      return "a text";
    }

    @Override
    public String shown() {
      String s = value.replace('\n', ' ').replace('\r', ' ').replace('\t', ' ');
      return '"' + (s.length() > SHOWN ? s.substring(0, SHOWN) + "..." : s) + '"';
    }
  }

  /**
   * A number, as written.
   *
   * @param place where it begins
   * @param text digits as in the file
   */
  record Num(Place place, String text) implements JsonNode {
    private static final int SHOWN = 30;

    /** The nearest double; infinite where the number is beyond all. */
    public double value() {
      return Double.parseDouble(text);
    }

    @Override
    public String words() {
      return "a number";
    }

    @Override
    public String shown() {
      return text.length() > SHOWN ? text.substring(0, SHOWN) + "..." : text;
    }
  }

  /** A truth value or null, by its word. */
  record Word(Place place, String text) implements JsonNode {
    @Override
    public String words() {
      return text;
    }

    @Override
    public String shown() {
      return text;
    }
  }

  /** A list in brackets. */
  record Items(Place place, List<JsonNode> items) implements JsonNode {
    /** Copies the list. */
    public Items {
      items = List.copyOf(items);
    }

    @Override
    public String words() {
      return "a list";
    }

    @Override
    public String shown() {
      return "a list";
    }
  }

  /** An object in braces; members in the order of the text, duplicates kept. */
  record Obj(Place place, List<Member> members) implements JsonNode {
    /** Copies the list. */
    public Obj {
      members = List.copyOf(members);
    }

    /** The first member of that name. */
    public Optional<JsonNode> get(String name) {
      return members.stream().filter(m -> m.name().equals(name)).findFirst().map(Member::value);
    }

    @Override
    public String words() {
      return "an object";
    }

    @Override
    public String shown() {
      return "an object";
    }
  }

  /**
   * One entry of an object.
   *
   * @param name its key
   * @param place of the key
   * @param value what it holds
   */
  record Member(String name, Place place, JsonNode value) {}
}
