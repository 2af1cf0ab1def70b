package halfwave.gui.swing;

import halfwave.gui.presentation.HelpPage;
import halfwave.gui.swing.widget.Theme;
import java.awt.BorderLayout;
import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;

/** A line of the list of pages; the first of a group has the group's name above it. */
final class HelpTopicCell extends JPanel implements ListCellRenderer<HelpPage> {

  private static final long serialVersionUID = 1L;

  private final JLabel group = new JLabel();
  private final JLabel title = new JLabel();

  HelpTopicCell(Theme theme) {
    super(new BorderLayout());
    var p = theme.palette();
    int pad = theme.px(8);
    setOpaque(false);
    group.setFont(theme.note());
    group.setForeground(p.softInk());
    group.setBorder(BorderFactory.createEmptyBorder(pad, pad, pad / 4, pad));
    title.setFont(theme.body());
    title.setOpaque(true);
    title.setBorder(BorderFactory.createEmptyBorder(pad / 3, 2 * pad, pad / 3, pad));
    add(group, BorderLayout.NORTH);
    add(title, BorderLayout.CENTER);
  }

  @Override
  public Component getListCellRendererComponent(
      JList<? extends HelpPage> list, HelpPage page, int index, boolean chosen, boolean focused) {
    boolean first =
        index == 0 || !list.getModel().getElementAt(index - 1).group().equals(page.group());
    group.setVisible(first);
    group.setText(page.group());
    title.setText(page.title());
    title.setBackground(chosen ? list.getSelectionBackground() : list.getBackground());
    title.setForeground(chosen ? list.getSelectionForeground() : list.getForeground());
    getAccessibleContext().setAccessibleName(page.title());
    getAccessibleContext().setAccessibleDescription(page.group());
    return this;
  }
}
