package halfwave.gui.swing.lesson;

import halfwave.lesson.Demonstration;
import java.nio.file.Path;
import java.util.List;

/** What can be done with demonstrations besides showing a shipped one. */
public interface LessonDesk {

  /**
   * A file of one's own.
   *
   * @param file where it lies
   * @param title the title of the demonstration, or the file's name where that is not known
   */
  record Own(Path file, String title) {}

  /** Files that were opened or saved, the latest first. */
  List<Own> own();

  /** Asks for a file and shows it to the class. */
  void open();

  /** Shows a file to the class. */
  void show(Path file);

  /** Begins a new one with the bench as it stands. */
  void create();

  /** Makes a copy of one and edits that. */
  void copy(Demonstration demonstration);

  /** Edits a file. */
  void edit(Path file);
}
