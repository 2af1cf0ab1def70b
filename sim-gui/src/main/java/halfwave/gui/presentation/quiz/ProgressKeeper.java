package halfwave.gui.presentation.quiz;

import halfwave.gui.presentation.Saying;
import halfwave.io.AtomicFile;
import halfwave.io.BadInputException;
import halfwave.io.quiz.ProgressFile;
import halfwave.quiz.Help;
import halfwave.quiz.Objective;
import halfwave.quiz.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Keeps how far a learner has come. A file that cannot be read is left as it is: what is practised
 * then lasts until the program ends.
 */
public final class ProgressKeeper {

  private static final String NAME = "progress.json";

  private final Path file;
  private volatile Progress progress = Progress.NONE;
  private volatile boolean readable = true;

  /** Kept in that folder. */
  public ProgressKeeper(Path folder) {
    file = folder.resolve(NAME);
  }

  /** Reads what is there; what comes back says why it could not be read. */
  Saying read() {
    if (Files.exists(file)) {
      try {
        progress = ProgressFile.read(file);
      } catch (BadInputException e) {
        readable = false;
        return words -> e.line(words.sentences());
      }
    }
    return Saying.NOTHING;
  }

  /** How far the learner has come. */
  Progress progress() {
    return progress;
  }

  /** One more call; what comes back says why it could not be kept. */
  Saying add(Objective objective, double ratio, Help help) {
    progress = progress.after(objective, ratio, help);
    if (!readable) {
      return words -> words.text("practice.not-kept", file);
    }
    try {
      Files.createDirectories(file.toAbsolutePath().resolveSibling("").normalize());
      AtomicFile.write(file, ProgressFile.text(progress));
      return Saying.NOTHING;
    } catch (IOException | BadInputException e) {
      return words -> words.text("practice.not-kept", file);
    }
  }

  /** Writes it elsewhere. */
  void export(Path to) {
    AtomicFile.write(to, ProgressFile.text(progress));
  }
}
