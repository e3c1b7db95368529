package io.github.holdpath.viewer.desk;

import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.function.BooleanSupplier;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;

/**
 * Something that the user can do: in a menu, by a button, by keys. A key that writes a letter does
 * nothing here while the user writes into a field.
 */
final class Act extends AbstractAction {
  private static final long serialVersionUID = 1L;

  private final String menu;
  private final transient List<KeyStroke> strokes;
  private final transient Runnable work;
  private final transient Optional<BooleanSupplier> on;

  /**
   * An act.
   *
   * @param menu in which it stands
   * @param name in the menu
   * @param keys as {@link KeyStroke#getKeyStroke(String)} reads them, with commas between
   * @param work what it does
   * @param on whether it is on, where it is a switch
   */
  Act(String menu, String name, String keys, Runnable work, Optional<BooleanSupplier> on) {
    super(name);
    this.menu = menu;
    this.work = work;
    this.on = on;
    this.strokes =
        List.of(keys.split(",", -1)).stream().map(String::strip).map(Act::stroke).toList();
    putValue(ACCELERATOR_KEY, strokes.get(0));
    putValue(SHORT_DESCRIPTION, name + " (" + keysInWords() + ")");
    if (on.isPresent()) {
      putValue(Action.SELECTED_KEY, on.get().getAsBoolean());
    }
  }

  private static KeyStroke stroke(String keys) {
    KeyStroke stroke = KeyStroke.getKeyStroke(keys);
    if (stroke == null) {
      throw new IllegalArgumentException("no key: " + keys);
    }
    return stroke;
  }

  String menu() {
    return menu;
  }

  String name() {
    return String.valueOf(getValue(NAME));
  }

  List<KeyStroke> strokes() {
    return strokes;
  }

  boolean isSwitch() {
    return on.isPresent();
  }

  /** Shows in menu and button whether it is on. */
  void refresh() {
    on.ifPresent(is -> putValue(Action.SELECTED_KEY, is.getAsBoolean()));
  }

  @Override
  public void actionPerformed(ActionEvent e) {
    if (EventQueue.getCurrentEvent() instanceof KeyEvent key && writing(key)) {
      refresh();
      return;
    }
    work.run();
    refresh();
  }

  private static boolean writing(KeyEvent key) {
    boolean letter =
        (key.getModifiersEx() & (InputEvent.CTRL_DOWN_MASK | InputEvent.ALT_DOWN_MASK)) == 0
            && (key.getKeyCode() < KeyEvent.VK_F1 || key.getKeyCode() > KeyEvent.VK_F24);
    return letter
        && KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner()
            instanceof JTextComponent text
        && text.isEditable();
  }

  /** Its keys for people, without those of the number pad that do the same. */
  String keysInWords() {
    StringJoiner all = new StringJoiner(" or ");
    for (KeyStroke stroke : strokes) {
      if (!isTwin(stroke.getKeyCode())) {
        String held = InputEvent.getModifiersExText(stroke.getModifiers());
        all.add((held.isEmpty() ? "" : held + "+") + word(stroke.getKeyCode()));
      }
    }
    return all.toString();
  }

  /** Whether a key stands for another one: on the number pad, or the one that carries the plus. */
  private static boolean isTwin(int code) {
    return (code >= KeyEvent.VK_NUMPAD0 && code <= KeyEvent.VK_NUMPAD9)
        || code == KeyEvent.VK_ADD
        || code == KeyEvent.VK_SUBTRACT
        || code == KeyEvent.VK_EQUALS;
  }

  private static String word(int code) {
    return switch (code) {
      case KeyEvent.VK_PLUS -> "+";
      case KeyEvent.VK_MINUS -> "-";
      case KeyEvent.VK_LEFT -> "Left";
      case KeyEvent.VK_RIGHT -> "Right";
      case KeyEvent.VK_UP -> "Up";
      case KeyEvent.VK_DOWN -> "Down";
      case KeyEvent.VK_PAGE_UP -> "Page Up";
      case KeyEvent.VK_PAGE_DOWN -> "Page Down";
      default -> {
        String text = KeyEvent.getKeyText(code);
        yield text.length() > 3
            ? text.charAt(0) + text.substring(1).toLowerCase(Locale.ROOT)
            : text;
      }
    };
  }
}
