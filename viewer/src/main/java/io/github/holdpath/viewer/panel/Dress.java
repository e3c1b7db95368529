package io.github.holdpath.viewer.panel;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Color;
import java.awt.Font;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import javax.swing.UIManager;
import javax.swing.border.Border;

/** Colours and fonts of the look and feel, with what counts where it has none of that name. */
final class Dress {
  private static final Color WRONG = new Color(0xC6, 0x28, 0x28);

  private Dress() {}

  /** Of an outline about a wrong value. */
  static Color wrong() {
    return Optional.ofNullable(UIManager.getColor("Component.error.focusedBorderColor"))
        .orElse(WRONG);
  }

  /** Of text that does not stand in the file. */
  static Color faint() {
    return Optional.ofNullable(UIManager.getColor("Label.disabledForeground")).orElse(Color.GRAY);
  }

  /** Of other text. */
  static Color text() {
    return Optional.ofNullable(UIManager.getColor("Label.foreground")).orElse(Color.DARK_GRAY);
  }

  /** Bold, in whatever size the text of the window has. */
  static void bold(JComponent part) {
    part.putClientProperty(FlatClientProperties.STYLE, "font: bold");
  }

  /** The outline about a wrong value, as thick as the one it replaces would be at the least. */
  static Border wrongOutline(Border usual, JComponent in) {
    var insets = usual.getBorderInsets(in);
    int thick = 2;
    return BorderFactory.createCompoundBorder(
        BorderFactory.createLineBorder(wrong(), thick),
        BorderFactory.createEmptyBorder(
            Math.max(0, insets.top - thick),
            Math.max(0, insets.left - thick),
            Math.max(0, insets.bottom - thick),
            Math.max(0, insets.right - thick)));
  }

  /** Lines of text that break where they must and can be selected and copied. */
  static JTextArea words(String name) {
    JTextArea area = new JTextArea();
    area.setEditable(false);
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
    area.setOpaque(false);
    area.setBorder(BorderFactory.createEmptyBorder());
    Font font = UIManager.getFont("Label.font");
    if (font != null) {
      area.setFont(font);
    }
    area.getAccessibleContext().setAccessibleName(name);
    return area;
  }
}
