package halfwave.gui.swing.charts;

import halfwave.gui.presentation.Inquiry;
import halfwave.gui.presentation.Wording;
import halfwave.gui.swing.widget.Theme;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;

/** How far a long computation is, and a button that gives it up; short ones go unnoticed. */
final class Waiting extends JPanel {

  private static final long serialVersionUID = 1L;

  /** What is done sooner than this needs no waiting (ms). */
  private static final int PATIENCE_MILLIS = 500;

  private final JProgressBar bar = new JProgressBar(0, 100);
  private final Timer patience;
  private transient Inquiry<?, ?> inquiry;

  /**
   * Hidden until something takes long.
   *
   * @param cancelled is called when the computation was given up
   */
  Waiting(Theme theme, Wording words, Inquiry<?, ?> inquiry, Runnable cancelled) {
    super(new MigLayout("insets 0, gap 6"));
    this.inquiry = inquiry;
    setOpaque(false);
    bar.getAccessibleContext().setAccessibleName(words.text("chart.waiting"));
    bar.setToolTipText(words.text("chart.waiting"));
    JButton cancel = new JButton(words.text("chart.cancel"));
    cancel.setName("chart.cancel");
    cancel.addActionListener(
        e -> {
          this.inquiry.cancel();
          update();
          cancelled.run();
        });
    add(bar, "w " + theme.px(90) + "px!");
    add(cancel);
    setVisible(false);
    patience = new Timer(PATIENCE_MILLIS, e -> setVisible(this.inquiry.busy()));
    patience.setRepeats(false);
  }

  /** The computation has moved on, begun or ended. */
  void update() {
    if (!inquiry.busy()) {
      patience.stop();
      setVisible(false);
    } else if (!isVisible() && !patience.isRunning()) {
      patience.restart();
    }
    bar.setValue((int) Math.round(100 * inquiry.share()));
  }
}
