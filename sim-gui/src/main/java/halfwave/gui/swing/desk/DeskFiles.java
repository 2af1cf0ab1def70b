package halfwave.gui.swing.desk;

import halfwave.gui.presentation.PlainName;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.desk.DeskModel;
import halfwave.gui.presentation.desk.DeskOutput;
import halfwave.gui.swing.widget.FileChoices;
import halfwave.gui.swing.widget.FileQuestions;
import halfwave.gui.swing.widget.TargetChooser;
import halfwave.io.OwnFile;
import halfwave.paper.PaperSize;
import java.awt.Component;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import javax.swing.plaf.basic.BasicFileChooserUI;

/** Asks which files the instructor's desk reads and writes. */
public final class DeskFiles {

  private final JFrame over;
  private final Wording words;
  private final TargetChooser targets;
  private final Supplier<PaperSize> size;
  private final FileChoices choices;

  /**
   * Nothing is asked yet.
   *
   * @param over the window that asks
   * @param words the words
   * @param size of sheets of paper
   * @param choices asks for files
   */
  public DeskFiles(JFrame over, Wording words, Supplier<PaperSize> size, FileChoices choices) {
    this.over = over;
    this.words = words;
    this.size = size;
    targets = new TargetChooser(over, words, choices);
    this.choices = choices;
  }

  /** Sheets of paper. */
  PaperSize size() {
    return size.get();
  }

  /** Whether the quiz on the desk may be left: it is saved, or nobody minds. */
  public boolean mayLeave(Component before, DeskModel model) {
    return mayLeave(before, model.state().unsaved(), "desk.unsaved", "desk.title");
  }

  /** The same of anything: the question and the title by their keys. */
  public boolean mayLeave(Component before, boolean unsaved, String question, String title) {
    return !unsaved
        || new FileQuestions(words)
            .agreed(before, words.text(question), words.text(title), "file.leave");
  }

  /** A file to read. */
  Optional<Path> read(String title) {
    JFileChooser chooser = choices.chooser(words.text(title));
    chooser.setFileFilter(FileQuestions.filter(words.text("quiz.files")));
    return choices.toOpen(chooser, over);
  }

  /** A file or a folder to read. */
  Optional<Path> place(String title) {
    JFileChooser chooser = choices.chooser(words.text(title));
    chooser.setFileSelectionMode(JFileChooser.FILES_AND_DIRECTORIES);
    // whoever is in the folder already opens that
    chooser.addPropertyChangeListener(JFileChooser.DIRECTORY_CHANGED_PROPERTY, e -> named(chooser));
    SwingUtilities.invokeLater(() -> named(chooser));
    return choices.toOpen(chooser, over);
  }

  private static void named(JFileChooser chooser) {
    if (chooser.getUI() instanceof BasicFileChooserUI ui && chooser.getSelectedFile() == null) {
      ui.setFileName(chooser.getCurrentDirectory().getPath());
    }
  }

  /** Where a quiz goes. */
  Optional<Path> quiz(String title, String name) {
    return own(title, name, "quiz.files");
  }

  /** Where a file of the program's own goes; title and kind by their keys. */
  public Optional<Path> own(String title, String name, String kind) {
    return targets.file(words.text(title), PlainName.of(name), words.text(kind), OwnFile.endings());
  }

  /** Where something else goes. */
  Optional<Path> target(DeskOutput output, String name) {
    return targets.file(
        words.text(output.key()),
        PlainName.of(name + ' ' + words.text(output.key())),
        output.ending().toUpperCase(Locale.ROOT),
        output.ending());
  }
}
