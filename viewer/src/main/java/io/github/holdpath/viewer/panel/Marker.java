package io.github.holdpath.viewer.panel;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Polygon;
import java.awt.RenderingHints;
import javax.swing.Icon;

/** A small triangle that points up at a slider, in the colour of the text. */
final class Marker implements Icon {
  private final int size;

  Marker(int size) {
    this.size = size;
  }

  @Override
  public void paintIcon(Component c, Graphics g, int x, int y) {
    Graphics2D copy = (Graphics2D) g.create();
    copy.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    copy.setColor(c.getForeground());
    copy.fill(
        new Polygon(new int[] {x, x + size / 2, x + size}, new int[] {y + size, y, y + size}, 3));
    copy.dispose();
  }

  @Override
  public int getIconWidth() {
    return size;
  }

  @Override
  public int getIconHeight() {
    return size;
  }
}
