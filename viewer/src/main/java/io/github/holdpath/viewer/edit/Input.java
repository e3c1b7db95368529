package io.github.holdpath.viewer.edit;

import io.github.holdpath.sim.scene.quantity.Dimension;
import io.github.holdpath.sim.scene.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One value that may be changed.
 *
 * @param pointer its field, a JSON Pointer without its leading slash
 * @param index which number of a list that shares a unit; 0 of a single value
 * @param label in plain words
 * @param group under which heading it stands
 * @param kind how it is written
 * @param text as it stands in the draft, or what counts where it is left out
 * @param inFile whether the draft has the field
 * @param scale for a slider; empty for a choice
 * @param choices words to choose among; none unless it is a choice
 * @param openedText the text before all changes, or what counted then
 * @param openedInFile whether the file has the field
 * @param note what to know about it, may be empty
 */
public record Input(
    String pointer,
    int index,
    String label,
    Group group,
    Kind kind,
    String text,
    boolean inFile,
    Optional<Scale> scale,
    List<String> choices,
    String openedText,
    boolean openedInFile,
    String note) {
  /** Headings. */
  public enum Group {
    /** Limits, law, override. */
    MOTION("Motion"),
    /** What single moves say. */
    MOVES("Single moves"),
    /** Friction, force, layout. */
    GRIP("Grip"),
    /** What is carried. */
    PART("Part"),
    /** What must be shown. */
    REQUIRED("Required");

    private final String title;

    Group(String title) {
      this.title = title;
    }

    /** As shown. */
    public String title() {
      return title;
    }
  }

  /** How a value is written. */
  public enum Kind {
    /** Numbers with a unit, as {@code 9.5 m/s^2}. */
    QUANTITY,
    /** A pure number. */
    NUMBER,
    /** A percentage. */
    PERCENT,
    /** One of some words. */
    CHOICE
  }

  /** Copies the list. */
  public Input {
    choices = List.copyOf(choices);
  }

  /** What tells it from the others. */
  public String key() {
    return pointer + "#" + index;
  }

  /** Its unit as written; empty for pure numbers and choices. */
  public String unit() {
    return Quantity.parse(text).quantity().map(Quantity::unit).orElse("");
  }

  /** Its number in that unit; empty for a choice. */
  public Optional<Double> value() {
    return number(text);
  }

  /** Its number before all changes, in the unit of now. */
  public Optional<Double> openedValue() {
    return unit(openedText).equals(unit()) ? number(openedText) : Optional.empty();
  }

  private Optional<Double> number(String of) {
    return kind == Kind.CHOICE
        ? Optional.empty()
        : Quantity.parse(of)
            .quantity()
            .filter(q -> index < q.numbers().size())
            .map(q -> q.numbers().get(index));
  }

  private static String unit(String of) {
    return Quantity.parse(of).quantity().map(Quantity::unit).orElse("");
  }

  /** The field's text with another number, in the unit of now. */
  public String withNumber(double number) {
    Quantity q = Quantity.parse(text).quantity().orElseThrow();
    List<String> numbers = new ArrayList<>(q.numbers().stream().map(Scale::number).toList());
    numbers.set(index, Scale.number(number));
    String joined = String.join(" ", numbers);
    return q.unit().isEmpty() ? joined : joined + " " + q.unit();
  }

  /** What is shown and typed: of a list its own number with the unit, else the text. */
  public String shown() {
    Optional<Quantity> q = Quantity.parse(text).quantity();
    return kind != Kind.CHOICE && q.isPresent() && q.get().numbers().size() > 1
        ? Scale.number(q.get().numbers().get(index)) + " " + q.get().unit()
        : text;
  }

  /**
   * The field's text for what was typed: where one length of a list was typed, in any unit, the
   * others stay; anything else is left to the reader to judge.
   */
  public String typed(String typed) {
    Optional<Quantity> list = Quantity.parse(text).quantity();
    Optional<Quantity> one = Quantity.parse(typed).quantity();
    if (kind != Kind.QUANTITY
        || list.isEmpty()
        || list.get().numbers().size() < 2
        || one.isEmpty()
        || one.get().numbers().size() != 1
        || !one.get().unitFault(Dimension.LENGTH).isEmpty()) {
      return typed.strip();
    }
    double unit = new Quantity(List.of(1.0), unit()).toSi(Dimension.LENGTH)[0];
    return withNumber(one.get().toSi(Dimension.LENGTH)[0] / unit);
  }

  /** The field's text at a position of its slider; at that of the opened value exactly that. */
  public String at(int position) {
    Scale s = scale.orElseThrow();
    Optional<Double> opened = openedValue();
    boolean there = opened.isPresent() && s.position(opened.get()) == position;
    return withNumber(there ? opened.get() : s.value(position));
  }

  /** Whether it stands as it was opened. */
  public boolean asOpened() {
    return inFile == openedInFile && text.equals(openedText);
  }
}
