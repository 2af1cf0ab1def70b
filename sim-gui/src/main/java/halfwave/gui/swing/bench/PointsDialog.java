package halfwave.gui.swing.bench;

import halfwave.circuit.Point;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.MeterView;
import halfwave.gui.swing.widget.Theme;
import halfwave.instrument.HookUp.Across;
import java.awt.Component;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Asks for two points of the circuit, one for each lead. */
final class PointsDialog {

  private final Component over;
  private final Wording words;
  private final JComboBox<Point> red;
  private final JComboBox<Point> black;

  PointsDialog(Component over, Theme theme, Wording words, List<Point> points, Across first) {
    this.over = over;
    this.words = words;
    red = choice(points, first.red());
    black = choice(points, first.black());
    red.setFont(theme.body());
    black.setFont(theme.body());
  }

  private JComboBox<Point> choice(List<Point> points, Point first) {
    JComboBox<Point> box = new JComboBox<>(points.toArray(Point[]::new));
    box.setSelectedItem(first);
    box.setRenderer(
        new DefaultListCellRenderer() {
          private static final long serialVersionUID = 1L;

          @Override
          public Component getListCellRendererComponent(
              JList<?> list, Object value, int index, boolean selected, boolean focused) {
            String name = MeterView.point((Point) value, words);
            return super.getListCellRendererComponent(list, name, index, selected, focused);
          }
        });
    return box;
  }

  Optional<Across> ask() {
    JPanel panel = new JPanel(new MigLayout("", "[][grow]"));
    JLabel redName = new JLabel(words.text("meter.red"));
    redName.setLabelFor(red);
    JLabel blackName = new JLabel(words.text("meter.black"));
    blackName.setLabelFor(black);
    panel.add(redName);
    panel.add(red, "growx, wrap");
    panel.add(blackName);
    panel.add(black, "growx");
    Object[] buttons = {words.text("meter.put"), words.text("file.cancel")};
    int chosen =
        JOptionPane.showOptionDialog(
            over,
            panel,
            words.text("meter.choose-place"),
            JOptionPane.DEFAULT_OPTION,
            JOptionPane.PLAIN_MESSAGE,
            null,
            buttons,
            buttons[0]);
    return chosen == 0
        ? Optional.of(new Across((Point) red.getSelectedItem(), (Point) black.getSelectedItem()))
        : Optional.empty();
  }
}
