package halfwave.gui.swing;

import halfwave.gui.presentation.CallDraft;
import halfwave.gui.presentation.DeskModel;
import halfwave.gui.presentation.DeskOutput;
import halfwave.gui.presentation.Wording;
import halfwave.io.OwnFile;
import halfwave.paper.PaperSize;
import java.awt.Component;
import java.io.File;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import org.jspecify.annotations.Nullable;

/** Asks which files the instructor's desk reads and writes. */
final class DeskFiles {

  private final JFrame over;
  private final Wording words;
  private final TargetChooser targets;
  private final Supplier<PaperSize> size;
  private @Nullable File last;

  DeskFiles(JFrame over, Wording words, Supplier<PaperSize> size) {
    this.over = over;
    this.words = words;
    this.size = size;
    targets = new TargetChooser(over, words);
  }

  /** Sheets of paper. */
  PaperSize size() {
    return size.get();
  }

  /** Whether the quiz on the desk may be left: it is saved, or nobody minds. */
  boolean mayLeave(Component before, DeskModel model) {
    return mayLeave(before, model.state().unsaved(), "desk.unsaved", "desk.title");
  }

  /** The same of anything: the question and the title by their keys. */
  boolean mayLeave(Component before, boolean unsaved, String question, String title) {
    return !unsaved
        || new FileQuestions(words)
            .agreed(before, words.text(question), words.text(title), "file.leave");
  }

  /** A file to read. */
  Optional<Path> read(String title) {
    JFileChooser chooser = new JFileChooser(last);
    chooser.setFileFilter(FileQuestions.filter(words.text("quiz.files")));
    return asked(chooser, title);
  }

  /** A file or a folder to read. */
  Optional<Path> place(String title) {
    JFileChooser chooser = new JFileChooser(last);
    chooser.setFileSelectionMode(JFileChooser.FILES_AND_DIRECTORIES);
    return asked(chooser, title);
  }

  private Optional<Path> asked(JFileChooser chooser, String title) {
    chooser.setDialogTitle(words.text(title));
    if (chooser.showOpenDialog(over) != JFileChooser.APPROVE_OPTION) {
      return Optional.empty();
    }
    last = chooser.getCurrentDirectory();
    return Optional.of(chooser.getSelectedFile().toPath());
  }

  /** Where a quiz goes. */
  Optional<Path> quiz(String title, String name) {
    return targets.file(
        words.text(title), CallDraft.plainName(name), words.text("quiz.files"), OwnFile.endings());
  }

  /** Where something else goes. */
  Optional<Path> target(DeskOutput output, String name) {
    return targets.file(
        words.text(output.key()),
        CallDraft.plainName(name + ' ' + words.text(output.key())),
        output.ending().toUpperCase(Locale.ROOT),
        output.ending());
  }
}
