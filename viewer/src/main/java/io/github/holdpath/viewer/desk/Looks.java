package io.github.holdpath.viewer.desk;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import java.awt.Font;
import javax.swing.UIManager;

/**
 * Theme and text size of the window. Image and timeline keep their light paper in both themes: on a
 * dark ground the outer colours of the margin could not be told from it.
 */
final class Looks {
  static final float USUAL = 13;
  private static final float SMALLEST = 10;
  private static final float LARGEST = 26;

  private boolean dark;
  private float size = USUAL;

  /** Before the first part of a window is made. */
  void begin() {
    // Otherwise it unpacks a native library for borders that it does not draw here.
    System.setProperty("flatlaf.useNativeLibrary", "false");
    FlatInterFont.install();
    apply();
  }

  boolean dark() {
    return dark;
  }

  float size() {
    return size;
  }

  void changeTheme() {
    dark = !dark;
    apply();
  }

  void changeSize(int steps) {
    size = steps == 0 ? USUAL : Math.max(SMALLEST, Math.min(LARGEST, size + 1.5f * steps));
    apply();
  }

  private void apply() {
    if (dark) {
      FlatDarkLaf.setup();
    } else {
      FlatLightLaf.setup();
    }
    Font font = new Font(FlatInterFont.FAMILY, Font.PLAIN, 1).deriveFont(size);
    UIManager.put("defaultFont", font);
    FlatLaf.updateUI();
  }
}
