package halfwave.io.quiz;

import halfwave.io.BadInputException;
import halfwave.io.OwnFile;
import halfwave.io.lesson.DemonstrationFile;
import java.nio.file.Path;

/** What can be opened from outside. It stands in the last theme, since it knows all kinds. */
public enum FileKind {
  /** A bench, or what is no other kind: opening it says what is wrong. */
  BENCH,
  /** A demonstration. */
  DEMONSTRATION,
  /** A quiz to take. */
  QUIZ;

  /**
   * What a file says that it is.
   *
   * @throws BadInputException if it cannot be read
   */
  public static FileKind of(Path file) {
    return switch (OwnFile.format(file)) {
      case DemonstrationFile.FORMAT -> DEMONSTRATION;
      case QuizFile.FORMAT -> QUIZ;
      default -> BENCH;
    };
  }
}
