package halfwave.gui.swing;

import halfwave.gui.presentation.CallDraft;
import halfwave.gui.presentation.MatchModel;
import halfwave.gui.presentation.Wording;
import halfwave.io.BadInputException;
import java.awt.Component;
import java.nio.file.Path;
import java.util.function.Consumer;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;

/** Opens and saves readings. */
final class ReadingsFiles {

  private final Wording words;
  private final MatchModel model;
  private final FileQuestions questions;

  ReadingsFiles(Wording words, MatchModel model) {
    this.words = words;
    this.model = model;
    questions = new FileQuestions(words);
  }

  void open(Component over) {
    JFileChooser chooser = chooser("match.load-title");
    if (chooser.showOpenDialog(over) == JFileChooser.APPROVE_OPTION) {
      attempt(over, chooser.getSelectedFile().toPath(), model::open);
    }
  }

  void save(Component over) {
    JFileChooser chooser = chooser("match.save-title");
    FileQuestions.suggest(chooser, CallDraft.plainName(words.text("match.readings")));
    if (chooser.showSaveDialog(over) == JFileChooser.APPROVE_OPTION) {
      Path file = FileQuestions.withEnding(chooser.getSelectedFile().toPath());
      if (questions.mayReplace(over, words.text("match.save-title"), file)) {
        attempt(over, file, model::save);
      }
    }
  }

  private JFileChooser chooser(String title) {
    JFileChooser chooser = new JFileChooser();
    chooser.setDialogTitle(words.text(title));
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
