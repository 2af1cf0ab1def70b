package halfwave.gui.swing.charts;

import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.charts.Healthy;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.TabSheet;
import halfwave.gui.swing.widget.Theme;
import java.awt.BorderLayout;
import java.awt.Component;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** One chart: a line that says what it shows, its controls, and the picture. */
abstract class ChartPanel extends TabSheet {

  private static final long serialVersionUID = 1L;

  /** Controls that take more than this share of the width crowd the sentence out. */
  private static final double CROWDED = 0.45;

  private static final String BESIDE = "wmin 0, pushx, growx";

  final transient Theme theme;
  private final JTextArea said;
  private final JPanel head;

  /** Whether the sentence stands above the controls. */
  private boolean above;

  ChartPanel(Theme theme, String name) {
    super(new BorderLayout(0, theme.px(2)));
    this.theme = theme;
    getAccessibleContext().setAccessibleName(name);
    said = Lettering.paragraph(" ", theme.body(), theme.palette().ink());
    head = new JPanel(new MigLayout("insets 4 0 0 0, gap 8, hidemode 3"));
    head.setOpaque(false);
    head.add(said, BESIDE);
    add(head, BorderLayout.NORTH);
  }

  /** Where the controls leave the sentence too little room, it has a line of its own. */
  @Override
  public void doLayout() {
    int controls = 0;
    for (Component c : head.getComponents()) {
      controls += c == said || !c.isVisible() ? 0 : c.getPreferredSize().width;
    }
    boolean narrow = controls > CROWDED * getWidth();
    if (narrow != above && head.getLayout() instanceof MigLayout layout) {
      above = narrow;
      layout.setComponentConstraints(said, narrow ? BESIDE + ", spanx, wrap" : BESIDE);
    }
    super.doLayout();
    // how many lines the sentence takes is known once it has its width
    head.doLayout();
    if (said.getPreferredSize().height != said.getHeight()) {
      head.invalidate();
      super.doLayout();
    }
  }

  /** Shows a state; called only while the panel can be seen. */
  abstract void show(State state, @Nullable Healthy healthy);

  /** The picture. */
  abstract ChartPicture picture();

  /** The numbers, with tabs between, or empty where there are none yet. */
  abstract String data();

  /** Whether it takes the circuit apart, and so tells what is wrong with the bench. */
  boolean tells() {
    return true;
  }

  /** Gives up what is computed for a panel that nobody sees. */
  void away() {}

  final void control(Component control) {
    // a list shows as much of its choice as there is room for, other words are whole
    head.add(control, control instanceof JComboBox ? "wmin " + theme.px(60) + "px" : "wmin pref");
  }

  /** The line above the picture. */
  final void say(String text) {
    if (!text.equals(said.getText())) {
      said.setText(text.isEmpty() ? " " : text);
      said.setToolTipText(text);
    }
  }
}
