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

  /** Of all the width for the inputs at most. */
  private static final double SHARE = 0.46;

  /** Width of the sum with all its columns, letters, and of all the width at most. */
  private static final double SUM = 44;

  private static final double SUM_SHARE = 0.34;

  /** From this width on there is room for all three, letters. */
  private static final double ROOM = 104;

  private final JPanel left = new JPanel(new BorderLayout());
  private final JComponent right;
  private final JSplitPane inner;
  private final JSplitPane outer;

  /** Of the window, pixels; 0 before it is known. */
  private int width;

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
    left.setMinimumSize(new Dimension((int) (NARROW * letter()), 100));
    double most = width > 0 ? SHARE * width : Double.MAX_VALUE;
    outer.setDividerLocation(on ? (int) Math.min(WIDE * letter(), most) : 0);
    outer.setDividerSize(divider(on));
    outer.revalidate();
  }

  private static float letter() {
    return UIManager.getFont("defaultFont").getSize2D();
  }

  /** For a window of a width that opens; without room for the sum it waits for its key. */
  void fit(int pixels) {
    width = pixels;
    showLeft(left.isVisible());
    showRight(right.isVisible() && hasRoom());
  }

  /** Whether there is room for all three. */
  boolean hasRoom() {
    return width >= ROOM * letter();
  }

  /** After a change of text size: inputs as wide as they need, the sum only where it has room. */
  void redress() {
    width = outer.getWidth();
    showLeft(left.isVisible());
    showRight(right.isVisible() && hasRoom());
  }

  boolean rightIsShown() {
    return right.isVisible();
  }

  void showRight(boolean on) {
    right.setVisible(on);
    inner.setDividerSize(divider(on));
    if (on) {
      double wide = Math.min(SUM * letter(), SUM_SHARE * (width > 0 ? width : outer.getWidth()));
      right.setPreferredSize(new Dimension((int) wide, 400));
      if (inner.getWidth() > 0) {
        inner.setDividerLocation(inner.getWidth() - (int) wide - inner.getDividerSize());
      } else {
        inner.resetToPreferredSizes();
      }
    }
    outer.revalidate();
  }

  private static int divider(boolean on) {
    return on ? UIManager.getInt("SplitPane.dividerSize") : 0;
  }
}
