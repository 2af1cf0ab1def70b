package halfwave.gui.swing.widget;

import halfwave.gui.presentation.Wording;
import halfwave.io.OwnFile;
import java.awt.Component;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.filechooser.FileNameExtensionFilter;

/** What is asked before work or a file is lost, and how files are called. */
public final class FileQuestions {

  private final Wording words;

  /** Questions in one language. */
  public FileQuestions(Wording words) {
    this.words = words;
  }

  /**
   * Whether unsaved work may be left: it was saved now, or nobody minds.
   *
   * @param save saves it and tells whether it was saved
   */
  public boolean mayLeave(Component over, String question, String title, BooleanSupplier save) {
    int chosen =
        ask(
            over,
            question,
            title,
            JOptionPane.QUESTION_MESSAGE,
            0,
            "file.save-first",
            "file.leave",
            "file.cancel");
    return chosen == 1 || (chosen == 0 && save.getAsBoolean());
  }

  /** Whether a file may be written: there is none of that name, or it may be lost. */
  boolean mayReplace(Component over, String title, Path file) {
    return !Files.exists(file) || agreed(over, words.text("file.overwrite"), title, "file.replace");
  }

  /** Whether somebody wants what cannot be taken back; to let it be is the usual answer. */
  public boolean agreed(Component over, String question, String title, String yes) {
    return ask(over, question, title, JOptionPane.WARNING_MESSAGE, 1, yes, "file.cancel") == 0;
  }

  /**
   * Something was left behind by a program that did not end as it should: back with it, or not. Who
   * does not decide is asked again at the next start.
   */
  public void bringBack(
      Component over, String question, String title, Runnable back, Runnable leave) {
    int chosen =
        ask(
            over,
            question,
            title,
            JOptionPane.QUESTION_MESSAGE,
            0,
            "recovery.bring-back",
            "recovery.leave");
    if (chosen == 0) {
      back.run();
    } else if (chosen == 1) {
      leave.run();
    }
  }

  /** What a chooser shows first: the program's own files. */
  public static FileNameExtensionFilter filter(String kind) {
    return new FileNameExtensionFilter(kind, OwnFile.endings());
  }

  private int ask(
      Component over, String question, String title, int kind, int usual, String... keys) {
    Object[] buttons = new Object[keys.length];
    for (int k = 0; k < keys.length; k++) {
      buttons[k] = words.text(keys[k]);
    }
    return JOptionPane.showOptionDialog(
        over, question, title, JOptionPane.DEFAULT_OPTION, kind, null, buttons, buttons[usual]);
  }

  /** A chooser offers a name in the folder it shows. */
  public static void suggest(JFileChooser chooser, String stem) {
    chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), stem + '.' + OwnFile.ENDING));
  }

  /** A name without an ending gets that of the program's own files. */
  public static Path withEnding(Path file) {
    return withEnding(file, OwnFile.ENDING);
  }

  /** A name without an ending gets one. */
  static Path withEnding(Path file, String ending) {
    String name = String.valueOf(file.getFileName());
    return name.contains(".") ? file : file.resolveSibling(name + '.' + ending);
  }
}
