package halfwave.gui.swing.editor;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.editor.EditorModel;
import halfwave.gui.presentation.editor.EditorWords;
import halfwave.gui.presentation.editor.Take;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Plate;
import halfwave.gui.swing.widget.Theme;
import java.awt.BorderLayout;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/** All that the editor shows while it records: the bench needs the room. */
final class RecorderPanel extends JPanel {

  private static final long serialVersionUID = 1L;

  private static final int CTRL = InputEvent.CTRL_DOWN_MASK;

  private final transient Wording words;
  private final transient EditorModel model;
  private final JLabel step;
  private final JLabel time;
  private final JTextArea lines;

  RecorderPanel(Theme theme, Wording words, EditorModel model) {
    super(new BorderLayout(0, theme.px(8)));
    this.words = words;
    this.model = model;
    var p = theme.palette();
    setBackground(p.ground());
    int pad = theme.px(12);
    // it lies on the main window: on a display without frames nothing else would tell them apart
    setBorder(
        BorderFactory.createCompoundBorder(
            BorderFactory.createLineBorder(p.danger()),
            BorderFactory.createEmptyBorder(pad, pad, pad, pad)));
    JPanel head =
        new JPanel(new MigLayout("insets 0, gap 8 2, fillx, novisualpadding", "[grow,fill][]"));
    head.setOpaque(false);
    step = Lettering.label(" ", theme.heading(), p.ink());
    time = Lettering.label(" ", theme.heading(), p.danger());
    time.setName("editor.recording");
    head.add(step, "wmin 0");
    head.add(time, "wrap");
    head.add(
        Lettering.paragraph(words.text("editor.recording-hint"), theme.note(), p.softInk()),
        "span, wmin 0, growx");
    add(head, BorderLayout.NORTH);
    Column column = new Column(theme);
    lines = Lettering.paragraph("", theme.body(), p.ink());
    lines.setName("editor.recorded");
    column.add(lines, "growx, wmin 0");
    add(Plate.around(theme, words.text("editor.shows"), column.scrolled()), BorderLayout.CENTER);
    JPanel foot = new JPanel(new MigLayout("insets 0, gap 8, novisualpadding"));
    foot.setOpaque(false);
    foot.add(Forms.button(words, "editor.keep", "editor.keep-hint", model::keep));
    foot.add(Forms.button(words, "editor.discard", "editor.discard-hint", model::discard));
    add(foot, BorderLayout.SOUTH);
    key(KeyEvent.VK_R, CTRL, model::keep);
    key(KeyEvent.VK_R, CTRL | InputEvent.SHIFT_DOWN_MASK, model::discard);
  }

  private void key(int code, int modifiers, Runnable action) {
    registerKeyboardAction(
        e -> action.run(),
        KeyStroke.getKeyStroke(code, modifiers),
        JComponent.WHEN_IN_FOCUSED_WINDOW);
  }

  /** Shows what was done so far. */
  void refresh() {
    if (!model.open() || model.bench().taken().isEmpty()) {
      return;
    }
    Take.Taken taken = model.bench().taken().get();
    step.setText(EditorWords.step(model.draft(), model.step(), words));
    time.setText(EditorWords.recordingTime(taken, words));
    lines.setText(EditorWords.recorded(taken, words));
  }
}
