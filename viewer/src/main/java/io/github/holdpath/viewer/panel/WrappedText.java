package io.github.holdpath.viewer.panel;

import java.awt.Dimension;
import java.awt.Insets;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import javax.swing.UIManager;
import javax.swing.text.View;

/** A sentence that is as high as it needs to be at its width. */
public final class WrappedText extends JTextArea {
  private static final long serialVersionUID = 1L;

  private int laidOut;

  /**
   * With an accessible name.
   *
   * @param name what it is
   */
  public WrappedText(String name) {
    setEditable(false);
    setFocusable(false);
    setLineWrap(true);
    setWrapStyleWord(true);
    setBorder(BorderFactory.createEmptyBorder(4, 10, 4, 10));
    getAccessibleContext().setAccessibleName(name);
    addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent e) {
            // Only another width needs another height; else it would be laid out without end.
            if (getWidth() != laidOut) {
              laidOut = getWidth();
              revalidate();
            }
          }
        });
  }

  /** Sets what is not there yet: the same words are not laid out again. */
  @Override
  public void setText(String text) {
    if (!text.equals(getText())) {
      super.setText(text);
    }
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setBackground(UIManager.getColor("Panel.background"));
  }

  @Override
  public Dimension getPreferredSize() {
    Dimension size = super.getPreferredSize();
    if (getParent() != null && getParent().getWidth() > 0) {
      Insets border = getInsets();
      View words = getUI().getRootView(this);
      words.setSize(getParent().getWidth() - border.left - border.right, Short.MAX_VALUE);
      int high = (int) Math.ceil(words.getPreferredSpan(View.Y_AXIS));
      size.height = high + border.top + border.bottom;
    }
    return size;
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension(50, getPreferredSize().height);
  }
}
