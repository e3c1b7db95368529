package io.github.holdpath.viewer.desk;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.table.DefaultTableModel;

/** The page of keys. */
final class KeysPage {
  private KeysPage() {}

  static void show(JFrame owner, List<Act> acts) {
    DefaultTableModel rows =
        new DefaultTableModel(new String[] {"Menu", "What", "Keys"}, 0) {
          private static final long serialVersionUID = 1L;

          @Override
          public boolean isCellEditable(int row, int column) {
            return false;
          }
        };
    acts.forEach(a -> rows.addRow(new String[] {a.menu(), a.name(), a.keysInWords()}));
    JTable table = new JTable(rows);
    float size = table.getFont().getSize2D();
    table.setRowHeight((int) (size * 1.7));
    table.getAccessibleContext().setAccessibleName("Keys");
    table.getColumnModel().getColumn(0).setPreferredWidth((int) (6 * size));
    table.getColumnModel().getColumn(1).setPreferredWidth((int) (18 * size));
    table.getColumnModel().getColumn(2).setPreferredWidth((int) (24 * size));
    JLabel mouse =
        new JLabel(
            "<html>Mouse in the scene: drag turns, with Shift or the right button shifts, the wheel"
                + " goes nearer,<br>double click shows all, a click on the path goes to that time."
                + " In the timeline: click or drag.</html>");
    mouse.setBorder(BorderFactory.createEmptyBorder(8, 10, 8, 10));
    JDialog page = new JDialog(owner, "Keys", false);
    page.add(mouse, BorderLayout.NORTH);
    page.add(new JScrollPane(table), BorderLayout.CENTER);
    page.getRootPane()
        .registerKeyboardAction(
            e -> page.dispose(),
            KeyStroke.getKeyStroke("ESCAPE"),
            JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
    page.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
    page.setSize(new Dimension((int) (50 * size), (int) (46 * size)));
    page.setLocationRelativeTo(owner);
    page.setVisible(true);
  }
}
