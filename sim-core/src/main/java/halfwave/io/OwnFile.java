package halfwave.io;

import java.nio.file.Path;

/**
 * Files of the program's own kinds. All are JSON and say in their field {@code format} what they
 * are; the ending {@code .halfwave} lets a desktop know them, {@code .json} any other program.
 */
public final class OwnFile {

  /** Of new files, without the dot. */
  public static final String ENDING = "halfwave";

  /** What can be opened from outside. */
  public enum Kind {
    /** A bench, or what is no other kind: opening it says what is wrong. */
    BENCH,
    /** A demonstration. */
    DEMONSTRATION,
    /** A quiz to take. */
    QUIZ
  }

  private OwnFile() {}

  /** The endings that are offered, the usual one first. */
  public static String[] endings() {
    return new String[] {ENDING, "json"};
  }

  /** Whether a file is called like one of the program's own. */
  public static boolean named(Path file) {
    return !stem(file).equals(String.valueOf(file.getFileName()));
  }

  /** The name of a file without its ending, if that is one of the program's own. */
  public static String stem(Path file) {
    String leaf = String.valueOf(file.getFileName());
    for (String ending : endings()) {
      if (leaf.endsWith('.' + ending)) {
        return leaf.substring(0, leaf.length() - ending.length() - 1);
      }
    }
    return leaf;
  }

  /**
   * What a file says that it is.
   *
   * @throws BadInputException if it cannot be read
   */
  public static Kind kind(Path file) {
    JsonValue read = JsonFile.read(file);
    boolean says = read.isObject() && read.anyFields().has("format");
    return switch (says ? read.anyFields().get("format").text() : "") {
      case DemonstrationFile.FORMAT -> Kind.DEMONSTRATION;
      case QuizFile.FORMAT -> Kind.QUIZ;
      default -> Kind.BENCH;
    };
  }
}
