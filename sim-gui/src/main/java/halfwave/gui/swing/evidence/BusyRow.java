package halfwave.gui.swing.evidence;

import halfwave.gui.presentation.Wording;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import net.miginfocom.swing.MigLayout;

/** Says that something is reckoned, and gives it up. */
final class BusyRow extends JPanel {

  private static final long serialVersionUID = 1L;

  BusyRow(Theme theme, Wording words, String key, String cancelKey, Runnable cancel) {
    super(new MigLayout("insets 0, gap 6, fillx, novisualpadding", "[][grow,fill][]"));
    setOpaque(false);
    JProgressBar progress = new JProgressBar();
    progress.setIndeterminate(true);
    progress.getAccessibleContext().setAccessibleName(words.text(key));
    add(Lettering.label(words.text(key), theme.note(), theme.palette().softInk()));
    add(progress, "wmin 0");
    add(Forms.button(words, cancelKey, cancel));
    setVisible(false);
  }
}
