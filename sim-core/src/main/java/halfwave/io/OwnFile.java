package halfwave.io;

import java.nio.file.Path;

/**
 * What files of the program's own kinds are called. All are JSON and say in their field {@code
 * format} what they are; the ending {@code .halfwave} lets a desktop know them, {@code .json} any
 * other program.
 */
public final class OwnFile {

  /** Of new files, without the dot. */
  public static final String ENDING = "halfwave";

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
   * What a file says that it is: its {@code format}, or nothing where it says none.
   *
   * @throws BadInputException if it cannot be read
   */
  public static String format(Path file) {
    JsonValue read = JsonFile.read(file);
    boolean says = read.isObject() && read.anyFields().has("format");
    return says ? read.anyFields().get("format").text() : "";
  }
}
