package halfwave.gui.swing.desk;

import halfwave.gui.swing.widget.Theme;
import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.border.Border;
import javax.swing.table.TableCellRenderer;

/** A cell that breaks its lines at the width of its column, so that all of it is read. */
final class WrappedCell implements TableCellRenderer {

  private final JTextArea area = new JTextArea();
  private final Border plain;
  private final Border keyboard;
  private final int besideText;
  private final int leastHeight;

  WrappedCell(Theme theme) {
    int gap = theme.px(3);
    besideText = 2 * gap;
    leastHeight = theme.px(26);
    area.setFont(theme.body());
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
    int line = area.getFontMetrics(theme.body()).getHeight();
    int above = Math.max(1, (leastHeight - line) / 2);
    plain = BorderFactory.createEmptyBorder(above, gap, above, gap);
    keyboard =
        BorderFactory.createCompoundBorder(
            BorderFactory.createLineBorder(theme.palette().sheet(), 1),
            BorderFactory.createEmptyBorder(above - 1, gap - 1, above - 1, gap - 1));
    area.setBorder(plain);
  }

  @Override
  public Component getTableCellRendererComponent(
      JTable table, Object value, boolean selected, boolean focused, int row, int column) {
    String text = String.valueOf(value);
    area.setText(text);
    area.getAccessibleContext().setAccessibleName(text);
    area.setBorder(focused ? keyboard : plain);
    area.setForeground(selected ? table.getSelectionForeground() : table.getForeground());
    area.setBackground(selected ? table.getSelectionBackground() : table.getBackground());
    return area;
  }

  /** How wide it is on one line (px). */
  int width(String text) {
    return area.getFontMetrics(area.getFont()).stringWidth(text) + besideText;
  }

  /** How high it is in a column of that width (px). */
  int height(String text, int width) {
    if (width(text) < width) {
      return leastHeight;
    }
    area.setText(text);
    area.setSize(width, Short.MAX_VALUE);
    return Math.max(leastHeight, area.getPreferredSize().height);
  }
}
