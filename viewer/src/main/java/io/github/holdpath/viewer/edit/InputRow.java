package io.github.holdpath.viewer.edit;

import io.github.holdpath.sim.scene.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** Collects inputs: reads each from the draft and gives it a scale about its opened value. */
final class InputRow {
  private static final String NOT_IN_FILE = "not in the file: this is what counts without it";
  private static final String OTHERWISE =
      "the file tells it in another way, which gives this value; a number replaces that";
  private static final String WAS = "a changed value counts as assumed; the file calls it ";

  private final Draft draft;
  private final List<Input> rows = new ArrayList<>();

  InputRow(Draft draft) {
    this.draft = draft;
  }

  List<Input> rows() {
    return List.copyOf(rows);
  }

  /** A value that is shown where the file has it. */
  void given(Input.Group group, String pointer, String label, DoubleFunction<Scale> scale) {
    if (draft.value(pointer).isPresent()) {
      add(group, pointer, 0, label, "", scale);
    }
  }

  /**
   * A value.
   *
   * @param usual what counts where it is left out; empty if nothing does
   * @param scale made of the opened value's number
   */
  void add(
      Input.Group group,
      String pointer,
      int index,
      String label,
      String usual,
      DoubleFunction<Scale> scale) {
    Optional<String> now = draft.value(pointer).filter(InputRow::isPlain);
    String text = now.orElse(usual);
    String opened = draft.openedValue(pointer).filter(InputRow::isPlain).orElse(usual);
    Optional<Quantity> q = quantity(text);
    if (q.isEmpty() || index >= q.get().numbers().size()) {
      return;
    }
    double value = q.get().numbers().get(index);
    double about =
        quantity(opened)
            .filter(o -> o.unit().equals(q.get().unit()) && index < o.numbers().size())
            .map(o -> o.numbers().get(index))
            .orElse(value);
    String unit = q.get().unit();
    Input.Kind kind =
        unit.isEmpty()
            ? Input.Kind.NUMBER
            : unit.equals("%") ? Input.Kind.PERCENT : Input.Kind.QUANTITY;
    rows.add(
        new Input(
            pointer,
            index,
            label,
            group,
            kind,
            text,
            now.isPresent(),
            Optional.of(scale.apply(about).with(about).with(value)),
            List.of(),
            opened,
            draft.openedValue(pointer).filter(InputRow::isPlain).isPresent(),
            note(pointer, now.isPresent())));
  }

  /** A choice among words. */
  void choice(Input.Group group, String pointer, String label, List<String> words) {
    Optional<String> now = draft.value(pointer);
    String opened = draft.openedValue(pointer).orElse("");
    rows.add(
        new Input(
            pointer,
            0,
            label,
            group,
            Input.Kind.CHOICE,
            now.orElse(""),
            now.isPresent(),
            Optional.empty(),
            words,
            opened,
            draft.openedValue(pointer).isPresent(),
            ""));
  }

  private String note(String pointer, boolean inFile) {
    for (var was : draft.countAsAssumed().entrySet()) {
      if (pointer.equals(was.getKey()) || pointer.startsWith(was.getKey() + "/")) {
        return draft.changed().contains(pointer) ? WAS + was.getValue() : "";
      }
    }
    if (!inFile && draft.value(pointer).isPresent()) {
      return OTHERWISE;
    }
    return inFile ? "" : NOT_IN_FILE;
  }

  private static boolean isPlain(String text) {
    return !text.startsWith("{") && !text.startsWith("[");
  }

  static Optional<Quantity> quantity(String text) {
    return Quantity.parse(text).quantity();
  }
}
