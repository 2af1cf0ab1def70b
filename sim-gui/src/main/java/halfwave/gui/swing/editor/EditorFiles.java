package halfwave.gui.swing.editor;

import halfwave.gui.presentation.PlainName;
import halfwave.gui.presentation.RecoveryFolder.Found;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.RecoveryWords;
import halfwave.gui.presentation.editor.EditorModel;
import halfwave.gui.presentation.editor.EditorWords;
import halfwave.gui.swing.widget.FileChoices;
import halfwave.gui.swing.widget.FileQuestions;
import halfwave.io.AtomicFile;
import halfwave.io.BadInputException;
import halfwave.io.OwnFile;
import halfwave.io.lesson.DemonstrationFile;
import halfwave.io.lesson.DemonstrationText;
import halfwave.io.lesson.DraftRecoveryFile;
import halfwave.lesson.Demonstration;
import java.awt.Component;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import org.jspecify.annotations.Nullable;

/** Opens and saves demonstrations, and asks before anything is lost. */
final class EditorFiles {

  private final Wording words;
  private final FileQuestions questions;
  private final EditorModel model;
  private final Consumer<Path> used;
  private final FileChoices choices;

  EditorFiles(Wording words, EditorModel model, Consumer<Path> used, FileChoices choices) {
    this.words = words;
    questions = new FileQuestions(words);
    this.model = model;
    this.used = used;
    this.choices = choices;
  }

  /** The demonstration in a file; a line says why where there is none. */
  Optional<Demonstration> read(Component over, Path file) {
    try {
      Demonstration read = DemonstrationFile.read(file);
      used.accept(file);
      return Optional.of(read);
    } catch (BadInputException e) {
      refuse(over, e.line(words.sentences()));
      return Optional.empty();
    }
  }

  /** Asks for a file to open. */
  Optional<Path> askOpen(Component over) {
    return choices.toOpen(chooser(words.text("file.open-lesson"), null), over);
  }

  /** Whether the draft may be left: it was saved, or nobody minds. */
  boolean mayLeave(Component over) {
    if (!model.open() || !model.edits().unsaved()) {
      return true;
    }
    return questions.mayLeave(
        over, words.text("file.unsaved-lesson"), words.text("file.save-lesson"), () -> save(over));
  }

  /** A draft was left behind by a program that did not end as it should. */
  void askBack(Component over, Found<DraftRecoveryFile> left, Runnable back, Runnable leave) {
    questions.bringBack(
        over, RecoveryWords.draft(left, words), words.text("recovery.title-draft"), back, leave);
  }

  boolean save(Component over) {
    Path file = model.file();
    return file == null ? saveAs(over) : mayWrite(over) && write(over, file);
  }

  boolean saveAs(Component over) {
    // before anybody thinks of a name for it
    if (!mayWrite(over)) {
      return false;
    }
    JFileChooser chooser = chooser(words.text("file.save-lesson"), model.file());
    if (model.file() == null) {
      String title = model.draft().title().words().map(w -> w.in(words.locale())).orElse("");
      FileQuestions.suggest(chooser, PlainName.of(title, model.draft().name()));
    }
    return choices
        .toSaveOwn(chooser, over, questions)
        .filter(file -> write(over, file))
        .isPresent();
  }

  /** Nobody could open a file again in which an act cannot be done; that is said. */
  private boolean mayWrite(Component over) {
    var blocked = model.blocked();
    blocked.ifPresent(b -> refuse(over, EditorWords.blocked(b, model.draft(), words)));
    return blocked.isEmpty();
  }

  private boolean write(Component over, Path file) {
    String stem = OwnFile.stem(file);
    // a file may be called by spaces, a demonstration may not
    stem = stem.isBlank() ? model.draft().name() : stem.strip();
    try {
      AtomicFile.write(file, DemonstrationText.of(model.draft().withName(stem).demonstration()));
    } catch (BadInputException e) {
      refuse(over, e.line(words.sentences()));
      return false;
    }
    model.saved(file, stem);
    used.accept(file);
    return true;
  }

  private JFileChooser chooser(String title, @Nullable Path file) {
    JFileChooser chooser = choices.chooser(title);
    chooser.setFileFilter(FileQuestions.filter(words.text("file.lessons")));
    if (file != null) {
      chooser.setSelectedFile(file.toFile());
    }
    return chooser;
  }

  private void refuse(Component over, String line) {
    var area = new javax.swing.JTextArea(line, 0, 50);
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
    area.setEditable(false);
    area.setOpaque(false);
    area.setSize(area.getPreferredSize());
    JOptionPane.showMessageDialog(
        over, area, words.text("menu.demonstration"), JOptionPane.ERROR_MESSAGE);
  }
}
