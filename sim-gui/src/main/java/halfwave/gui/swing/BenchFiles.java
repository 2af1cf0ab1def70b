package halfwave.gui.swing;

import halfwave.bench.Bench;
import halfwave.board.BoardSettings;
import halfwave.board.ShippedBoards;
import halfwave.gui.presentation.RecoveryFolder.Found;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Autosave;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.RecoveryWords;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.swing.widget.FileChoices;
import halfwave.gui.swing.widget.FileQuestions;
import halfwave.io.AtomicFile;
import halfwave.io.BadInputException;
import halfwave.io.bench.BenchFile;
import halfwave.io.bench.BenchText;
import halfwave.io.bench.RecoveryFile;
import java.nio.file.Path;
import java.util.function.Consumer;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.JOptionPane;

/** Opens and saves benches, and asks before anything is lost. */
final class BenchFiles {

  private final JFrame over;
  private final Wording words;
  private final FileQuestions questions;
  private final Workbench workbench;
  private final Consumer<Path> used;
  private final FileChoices choices;

  BenchFiles(
      JFrame over, Wording words, Workbench workbench, Consumer<Path> used, FileChoices choices) {
    this.over = over;
    this.words = words;
    questions = new FileQuestions(words);
    this.workbench = workbench;
    this.used = used;
    this.choices = choices;
  }

  /** Whether the bench may be left: it was saved, or nobody minds. */
  boolean mayLeave() {
    if (!workbench.ready() || !workbench.shown().unsaved()) {
      return true;
    }
    return questions.mayLeave(
        over, words.text("file.unsaved"), words.text("file.save"), this::save);
  }

  void askOpen() {
    if (!mayLeave()) {
      return;
    }
    choices.toOpen(chooser(words.text("file.open")), over).ifPresent(this::open);
  }

  void openIfAllowed(Path file) {
    if (mayLeave()) {
      open(file);
    }
  }

  private void open(Path file) {
    try {
      Bench bench = BenchFile.read(file);
      workbench.want(
          new Intent.Open(bench, ShippedBoards.standard(bench.design().ignition()), file));
      used.accept(file);
    } catch (BadInputException e) {
      refuse(words.text("file.no-bench", e.line(words.sentences())));
    }
  }

  void openShipped(Bench bench) {
    if (mayLeave()) {
      workbench.want(
          new Intent.Open(bench, ShippedBoards.standard(bench.design().ignition()), null));
    }
  }

  /** A bench that was fitted to readings, on the board that is there. */
  void openFitted(Bench bench) {
    if (mayLeave()) {
      workbench.want(new Intent.Open(bench, workbench.shown().moment().settings(), null));
    }
  }

  /** A bench was left behind by a program that did not end as it should. */
  void askBack(Found<RecoveryFile> left, Autosave autosave) {
    questions.bringBack(
        over,
        RecoveryWords.bench(left, words),
        words.text("recovery.title"),
        () -> workbench.want(autosave.bringBack(left)),
        autosave::leave);
  }

  /** The bench as it is, on another board. */
  void changeBoard(BoardSettings board) {
    State state = workbench.shown();
    workbench.want(new Intent.Open(state.moment().bench(), board, state.paper().file()));
  }

  boolean save() {
    if (!workbench.ready() || sealed()) {
      return false;
    }
    Path file = workbench.shown().paper().file();
    return file == null ? saveAs() : write(file);
  }

  /** A file would tell what is hidden. */
  private boolean sealed() {
    boolean sealed = workbench.shown().seal() != null;
    if (sealed) {
      JOptionPane.showMessageDialog(over, words.text("seal.no-save"));
    }
    return sealed;
  }

  boolean saveAs() {
    if (!workbench.ready() || sealed()) {
      return false;
    }
    JFileChooser chooser = chooser(words.text("file.save"));
    if (workbench.shown().paper().file() == null) {
      FileQuestions.suggest(chooser, workbench.shown().moment().bench().name());
    }
    return choices.toSaveOwn(chooser, over, questions).filter(this::write).isPresent();
  }

  private boolean write(Path file) {
    Bench bench = workbench.shown().moment().bench();
    try {
      AtomicFile.write(file, BenchText.of(bench));
    } catch (BadInputException e) {
      refuse(e.line(words.sentences()));
      return false;
    }
    workbench.want(new Intent.Saved(bench, file));
    used.accept(file);
    return true;
  }

  private JFileChooser chooser(String title) {
    JFileChooser chooser = choices.chooser(title);
    chooser.setFileFilter(FileQuestions.filter(words.text("file.benches")));
    Path file = workbench.ready() ? workbench.shown().paper().file() : null;
    if (file != null) {
      chooser.setSelectedFile(file.toFile());
    }
    return chooser;
  }

  private void refuse(String line) {
    JOptionPane.showMessageDialog(over, line, over.getTitle(), JOptionPane.ERROR_MESSAGE);
  }
}
