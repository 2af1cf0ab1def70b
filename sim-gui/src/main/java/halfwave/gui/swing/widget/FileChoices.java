package halfwave.gui.swing.widget;

import java.awt.Component;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JFileChooser;
import org.jspecify.annotations.Nullable;

/** Where files are asked for: every question begins in the folder that the one before ended in. */
public final class FileChoices {

  private final Supplier<@Nullable Path> last;
  private final Consumer<Path> remember;

  /**
   * Questions for files.
   *
   * @param last the folder of the last file, or null: there was none
   * @param remember keeps the folder of another one
   */
  public FileChoices(Supplier<@Nullable Path> last, Consumer<Path> remember) {
    this.last = last;
    this.remember = remember;
  }

  /** A question with that title. */
  public JFileChooser chooser(String title) {
    Path folder = last.get();
    JFileChooser chooser = new JFileChooser(folder == null ? null : folder.toFile());
    chooser.setDialogTitle(title);
    return chooser;
  }

  /** What is to be read; empty where nobody chose. */
  public Optional<Path> toOpen(JFileChooser chooser, Component over) {
    return chosen(chooser, chooser.showOpenDialog(over));
  }

  /** What is to be written; empty where nobody chose. */
  public Optional<Path> toSave(JFileChooser chooser, Component over) {
    return chosen(chooser, chooser.showSaveDialog(over));
  }

  /** The same for a file of the program's own: with its ending, and over no other unasked. */
  public Optional<Path> toSaveOwn(JFileChooser chooser, Component over, FileQuestions questions) {
    return toSave(chooser, over)
        .map(FileQuestions::withEnding)
        .filter(file -> questions.mayReplace(over, chooser.getDialogTitle(), file));
  }

  private Optional<Path> chosen(JFileChooser chooser, int answer) {
    if (answer != JFileChooser.APPROVE_OPTION) {
      return Optional.empty();
    }
    Path chosen = chooser.getSelectedFile().toPath().toAbsolutePath();
    Path folder = Files.isDirectory(chosen) ? chosen : chosen.getParent();
    if (folder != null) {
      remember.accept(folder);
    }
    return Optional.of(chosen);
  }
}
