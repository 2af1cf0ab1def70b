package halfwave.gui.swing.quiz;

import halfwave.gui.presentation.quiz.Offer;
import halfwave.gui.swing.widget.Theme;
import java.awt.BorderLayout;
import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;

/** Something that may be done; the first of a part has the part's name above it. */
final class OfferCell extends JPanel implements ListCellRenderer<Offer> {

  private static final long serialVersionUID = 1L;

  private final JLabel place = new JLabel();
  private final JLabel name = new JLabel();
  private final JLabel costs = new JLabel();
  private final JPanel row = new JPanel(new BorderLayout());

  OfferCell(Theme theme) {
    super(new BorderLayout());
    var p = theme.palette();
    int pad = theme.px(8);
    setOpaque(false);
    place.setFont(theme.note());
    place.setForeground(p.softInk());
    place.setBorder(BorderFactory.createEmptyBorder(pad, pad, pad / 4, pad));
    name.setFont(theme.body());
    costs.setFont(theme.body());
    costs.setBorder(BorderFactory.createEmptyBorder(0, pad, 0, 0));
    row.setBorder(BorderFactory.createEmptyBorder(pad / 2, 2 * pad, pad / 2, pad));
    row.add(name, BorderLayout.CENTER);
    row.add(costs, BorderLayout.EAST);
    add(place, BorderLayout.NORTH);
    add(row, BorderLayout.CENTER);
  }

  @Override
  public Component getListCellRendererComponent(
      JList<? extends Offer> list, Offer offer, int index, boolean chosen, boolean focused) {
    boolean first = index == 0 || list.getModel().getElementAt(index - 1).part() != offer.part();
    place.setVisible(first);
    place.setText(offer.place());
    name.setText(offer.name());
    costs.setText(offer.costs());
    row.setBackground(chosen ? list.getSelectionBackground() : list.getBackground());
    name.setForeground(chosen ? list.getSelectionForeground() : list.getForeground());
    costs.setForeground(name.getForeground());
    setToolTipText(
        String.join("\n", offer.cautions()).isEmpty()
            ? offer.name()
            : "<html>" + offer.name() + "<br>⚠ " + String.join("<br>⚠ ", offer.cautions()));
    getAccessibleContext().setAccessibleName(offer.name() + ", " + offer.costs());
    getAccessibleContext().setAccessibleDescription(offer.place());
    return this;
  }
}
