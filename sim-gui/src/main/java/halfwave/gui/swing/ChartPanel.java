package halfwave.gui.swing;

import halfwave.gui.presentation.Healthy;
import halfwave.gui.presentation.State;
import java.awt.BorderLayout;
import java.awt.Component;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** One chart: a line that says what it shows, its controls, and the picture. */
abstract class ChartPanel extends JPanel {

  private static final long serialVersionUID = 1L;

  final transient Theme theme;
  private final JLabel said;
  private final JPanel head;

  ChartPanel(Theme theme, String name) {
    super(new BorderLayout(0, theme.px(2)));
    this.theme = theme;
    setOpaque(false);
    getAccessibleContext().setAccessibleName(name);
    said = Lettering.label(" ", theme.body(), theme.palette().ink());
    head = new JPanel(new MigLayout("insets 4 0 0 0, gap 8, hidemode 3"));
    head.setOpaque(false);
    head.add(said, "wmin 0, pushx, growx");
    add(head, BorderLayout.NORTH);
  }

  /** Shows a state; called only while the panel can be seen. */
  abstract void show(State state, @Nullable Healthy healthy);

  /** The picture. */
  abstract ChartPicture picture();

  /** The numbers, with tabs between, or empty where there are none yet. */
  abstract String data();

  /** Gives up what is computed for a panel that nobody sees. */
  void away() {}

  final void control(Component control) {
    head.add(control, "wmin pref");
  }

  /** The line above the picture. */
  final void say(String text) {
    if (!text.equals(said.getText())) {
      said.setText(text.isEmpty() ? " " : text);
      said.setToolTipText(text);
    }
  }
}
