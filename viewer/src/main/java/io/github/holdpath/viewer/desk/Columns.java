package io.github.holdpath.viewer.desk;

import java.awt.BorderLayout;
import java.awt.Dimension;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.UIManager;

/** Inputs, scenes and sum beside each other; the outer two come and go. */
final class Columns {
  /** Width of the inputs, and the least of it, letters. */
  private static final double WIDE = 36;

  private static final double NARROW = 16;

  private final JPanel left = new JPanel(new BorderLayout());
  private final JComponent right;
  private final JSplitPane inner;
  private final JSplitPane outer;

  /** With nothing at the left. */
  Columns(JComponent middle, JComponent right) {
    this.right = right;
    this.inner = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, middle, right);
    this.outer = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, left, inner);
    inner.setResizeWeight(1);
    inner.setContinuousLayout(true);
    outer.setContinuousLayout(true);
    outer.setBorder(BorderFactory.createEmptyBorder());
    showLeft(false);
  }

  /** All of them. */
  JSplitPane whole() {
    return outer;
  }

  /** Keeps the dividers from taking keys that stand in the list of acts. */
  void free(Acts acts) {
    acts.free(inner);
    acts.free(outer);
  }

  /** Puts a part at the left, and another below it. */
  void left(JComponent part, JComponent below) {
    left.removeAll();
    left.add(part, BorderLayout.CENTER);
    left.add(below, BorderLayout.SOUTH);
    showLeft(true);
  }

  /** Shows or hides what is at the left, if anything is. */
  void changeLeft() {
    showLeft(!left.isVisible() && left.getComponentCount() > 0);
  }

  boolean leftIsShown() {
    return left.isVisible();
  }

  private void showLeft(boolean on) {
    left.setVisible(on);
    float letter = UIManager.getFont("defaultFont").getSize2D();
    left.setMinimumSize(new Dimension((int) (NARROW * letter), 100));
    outer.setDividerLocation(on ? (int) (WIDE * letter) : 0);
    outer.setDividerSize(divider(on));
    outer.revalidate();
  }

  boolean rightIsShown() {
    return right.isVisible();
  }

  void showRight(boolean on) {
    right.setVisible(on);
    inner.setDividerSize(divider(on));
    if (on) {
      inner.resetToPreferredSizes();
    }
    outer.revalidate();
  }

  private static int divider(boolean on) {
    return on ? UIManager.getInt("SplitPane.dividerSize") : 0;
  }
}
