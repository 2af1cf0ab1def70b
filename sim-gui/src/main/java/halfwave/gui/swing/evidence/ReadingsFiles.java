package halfwave.gui.swing.evidence;

import halfwave.gui.presentation.PlainName;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.evidence.MatchModel;
import halfwave.gui.swing.widget.FileChoices;
import halfwave.gui.swing.widget.FileQuestions;
import halfwave.io.BadInputException;
import java.awt.Component;
import java.nio.file.Path;
import java.util.function.Consumer;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;

/** Opens and saves readings. */
public final class ReadingsFiles {

  private final Wording words;
  private final MatchModel model;
  private final FileQuestions questions;
  private final FileChoices choices;

  /** Nothing is asked yet. */
  public ReadingsFiles(Wording words, MatchModel model, FileChoices choices) {
    this.words = words;
    this.model = model;
    this.choices = choices;
    questions = new FileQuestions(words);
  }

  void open(Component over) {
    choices
        .toOpen(chooser("match.load-title"), over)
        .ifPresent(file -> attempt(over, file, model::open));
  }

  void save(Component over) {
    JFileChooser chooser = chooser("match.save-title");
    FileQuestions.suggest(chooser, PlainName.of(words.text("match.readings")));
    choices.toSaveOwn(chooser, over, questions).ifPresent(file -> attempt(over, file, model::save));
  }

  private JFileChooser chooser(String title) {
    JFileChooser chooser = choices.chooser(words.text(title));
    chooser.setFileFilter(FileQuestions.filter(words.text("match.files")));
    return chooser;
  }

  private void attempt(Component over, Path file, Consumer<Path> action) {
    try {
      action.accept(file);
    } catch (BadInputException e) {
      JOptionPane.showMessageDialog(
          over, e.line(words.sentences()), words.text("match.title"), JOptionPane.ERROR_MESSAGE);
    }
  }
}
