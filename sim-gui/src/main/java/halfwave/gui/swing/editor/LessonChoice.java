package halfwave.gui.swing.editor;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.lesson.LessonModel;
import halfwave.gui.presentation.lesson.LessonSource;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Playthrough;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JFrame;
import javax.swing.JOptionPane;

/** Which demonstration is meant: the one that is shown, or one that is asked for. */
public final class LessonChoice {

  private final JFrame over;
  private final Wording words;
  private final LessonModel model;
  private final Editing editing;

  /** Nothing is asked yet. */
  public LessonChoice(JFrame over, Wording words, LessonModel model, Editing editing) {
    this.over = over;
    this.words = words;
    this.model = model;
    this.editing = editing;
  }

  /** The demonstration; nothing where somebody thinks better of it. */
  public Optional<Demonstration> ask() {
    Playthrough shown = model.at();
    if (shown != null) {
      return Optional.of(shown.demonstration());
    }
    List<LessonSource> all = editing.sources();
    JComboBox<String> list =
        new JComboBox<>(all.stream().map(LessonSource::name).toArray(String[]::new));
    list.setName("paper.demonstrations");
    int answer =
        JOptionPane.showConfirmDialog(
            over,
            list,
            words.text("paper.choose"),
            JOptionPane.OK_CANCEL_OPTION,
            JOptionPane.PLAIN_MESSAGE);
    return answer == JOptionPane.OK_OPTION
        ? editing.read(all.get(list.getSelectedIndex()))
        : Optional.empty();
  }
}
