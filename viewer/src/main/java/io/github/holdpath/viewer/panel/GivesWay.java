package io.github.holdpath.viewer.panel;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import javax.swing.JPanel;

/**
 * Parts below each other of which the middle one gives way in a low window, so that it leaves room
 * for what stands above.
 */
public final class GivesWay extends JPanel {
  private static final long serialVersionUID = 1L;

  /** Of the window's height for the middle part, before it gives way. */
  private static final double SHARE = 0.3;

  /** The least of its usual height. */
  private static final double LEAST = 0.77;

  private final Component middle;

  /**
   * With three parts.
   *
   * @param above keeps its height
   * @param middle gives way
   * @param below keeps its height
   */
  public GivesWay(Component above, Component middle, Component below) {
    super(new BorderLayout());
    this.middle = middle;
    add(above, BorderLayout.NORTH);
    add(middle, BorderLayout.CENTER);
    add(below, BorderLayout.SOUTH);
  }

  @Override
  public Dimension getPreferredSize() {
    Dimension size = super.getPreferredSize();
    if (getParent() != null && getParent().getHeight() > 0) {
      int usual = middle.getPreferredSize().height;
      int room = (int) Math.max(LEAST * usual, SHARE * getParent().getHeight());
      size.height -= Math.max(0, usual - room);
    }
    return size;
  }
}
