package halfwave.gui.swing;

import halfwave.gui.presentation.EditorModel;
import halfwave.gui.presentation.EditorWords;
import halfwave.gui.presentation.Take;
import halfwave.gui.presentation.Wording;
import halfwave.lesson.Play;
import java.awt.Component;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** Records what is done on the bench, and brings the bench where a step begins or ends. */
final class RecordForm extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient EditorModel model;
  private final JTextArea said;
  private final JButton record;
  private final JButton keep;
  private final JButton discard;
  private final JButton begin;
  private final JButton end;
  private final JButton stay;

  RecordForm(Theme theme, Wording words, EditorModel model) {
    super(new MigLayout("insets 0, gap 6 4, fillx, hidemode 3", "[][][][grow]"));
    this.theme = theme;
    this.words = words;
    this.model = model;
    setOpaque(false);
    record = Forms.button(words, "editor.record", "editor.record-hint", model::record);
    keep = Forms.button(words, "editor.keep", "editor.keep-hint", model::keep);
    discard = Forms.button(words, "editor.discard", "editor.discard-hint", model::discard);
    begin = Forms.button(words, "editor.to-begin", "editor.to-begin-hint", model::toBegin);
    end = Forms.button(words, "editor.to-end", "editor.to-end-hint", model::toEnd);
    stay = Forms.button(words, "file.cancel", model::stay);
    stay.setName("editor.stay");
    said = Lettering.paragraph("", theme.body(), theme.palette().ink());
    said.setName("editor.said");
    add(record);
    add(keep);
    add(discard);
    add(begin);
    add(end);
    add(stay);
    add(said, "newline, span, growx, wmin 0");
    refresh();
  }

  void refresh() {
    boolean recording = model.bench().recording();
    boolean going = model.bench().going();
    Optional<Take.Taken> taken = model.bench().taken();
    set(record, !recording && !going);
    set(begin, !recording && !going);
    set(end, !recording && !going);
    set(keep, recording);
    set(discard, recording);
    set(stay, going);
    String text = "";
    if (going) {
      text = words.text("lesson.preparing");
    } else if (taken.isPresent()) {
      text = EditorWords.recording(taken.get(), words);
    } else if (model.bench().lost()) {
      text = words.text("editor.lost");
    }
    said.setText(text);
    said.setVisible(!text.isEmpty());
    said.setForeground(recording ? theme.palette().danger() : theme.palette().softInk());
    record.setText(words.text(again() ? "editor.record-again" : "editor.record"));
  }

  private boolean again() {
    return model.open()
        && model.step() >= 0
        && !model.draft().steps().get(model.step()).play().equals(Play.NOTHING);
  }

  /** A button that goes takes the focus with it: it goes to the one that comes in its place. */
  private void set(Component button, boolean seen) {
    boolean focused = button.isFocusOwner();
    button.setVisible(seen);
    if (focused && !seen) {
      (model.bench().recording() ? keep : record).requestFocusInWindow();
    }
  }
}
