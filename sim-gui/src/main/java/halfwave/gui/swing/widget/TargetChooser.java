package halfwave.gui.swing.widget;

import halfwave.gui.presentation.Wording;
import halfwave.io.BadInputException;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.io.File;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.JOptionPane;
import javax.swing.filechooser.FileNameExtensionFilter;

/** Asks where a file is to go, and asks again before another one is lost. */
public final class TargetChooser {

  private final JFrame over;
  private final Wording words;
  private final FileQuestions questions;
  private final FileChoices choices;

  /** Nothing is asked yet. */
  public TargetChooser(JFrame over, Wording words, FileChoices choices) {
    this.over = over;
    this.words = words;
    this.choices = choices;
    questions = new FileQuestions(words);
  }

  /**
   * A file.
   *
   * @param title what it is for
   * @param name what it may be called
   * @param kinds what the endings mean
   * @param endings the endings, without dots; the first one is taken where a name has none
   */
  public Optional<Path> file(String title, String name, String kinds, String... endings) {
    JFileChooser chooser = choices.chooser(title);
    chooser.setFileFilter(new FileNameExtensionFilter(kinds, endings));
    chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), name + "." + endings[0]));
    return choices
        .toSave(chooser, over)
        .map(file -> FileQuestions.withEnding(file, endings[0]))
        .filter(file -> promises(file, endings))
        .filter(file -> questions.mayReplace(over, over.getTitle(), file));
  }

  /** Whether the name says what will be in the file; where it does not, that is said. */
  private boolean promises(Path file, String... endings) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    boolean good = Arrays.stream(endings).anyMatch(e -> name.endsWith("." + e));
    if (!good) {
      String allowed = "." + String.join(", .", endings);
      BadInputException odd =
          BadInputException.ofFile(
              file.toString(), Message.of(MessageKey.ALLOWED_ENDING, Argument.text(allowed)));
      JOptionPane.showMessageDialog(
          over, odd.line(words.sentences()), over.getTitle(), JOptionPane.ERROR_MESSAGE);
    }
    return good;
  }

  /** A folder. */
  public Optional<Path> folder(String title) {
    JFileChooser chooser = choices.chooser(title);
    chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
    return choices.toSave(chooser, over);
  }
}
