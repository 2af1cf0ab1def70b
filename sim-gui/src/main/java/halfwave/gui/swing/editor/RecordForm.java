package halfwave.gui.swing.editor;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.editor.EditorModel;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import halfwave.lesson.Play;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** Records what is done on the bench, and brings the bench where a step begins or ends. */
final class RecordForm extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Wording words;
  private final transient EditorModel model;
  private final JTextArea said;
  private final JButton record;
  private final JButton begin;
  private final JButton end;
  private final JButton stay;

  RecordForm(Theme theme, Wording words, EditorModel model) {
    super(new MigLayout("insets 0, gap 6 4, fillx, hidemode 3, novisualpadding", "[][][grow]"));
    this.words = words;
    this.model = model;
    setOpaque(false);
    record = Forms.button(words, "editor.record", "editor.record-hint", model::record);
    begin = Forms.button(words, "editor.to-begin", "editor.to-begin-hint", model::toBegin);
    end = Forms.button(words, "editor.to-end", "editor.to-end-hint", model::toEnd);
    stay = Forms.button(words, "file.cancel", model::stay);
    stay.setName("editor.stay");
    said = Lettering.paragraph("", theme.body(), theme.palette().softInk());
    said.setName("editor.said");
    add(record);
    add(begin);
    add(end);
    add(stay);
    add(said, "newline, span, growx, wmin 0");
    refresh();
  }

  void refresh() {
    boolean going = model.bench().going();
    record.setVisible(!going);
    begin.setVisible(!going);
    end.setVisible(!going);
    stay.setVisible(going);
    for (JButton each : List.of(record, begin, end)) {
      each.setEnabled(!model.sealed());
    }
    String text = "";
    if (model.sealed()) {
      text = words.text("editor.sealed");
    } else if (going) {
      text = words.text("lesson.preparing");
    } else if (model.bench().lost()) {
      text = words.text("editor.lost");
    }
    // its line is kept
    said.setText(text.isEmpty() ? " " : text);
    record.setText(words.text(again() ? "editor.record-again" : "editor.record"));
  }

  private boolean again() {
    return model.open()
        && model.step() >= 0
        && !model.draft().steps().get(model.step()).play().equals(Play.NOTHING);
  }
}
