package halfwave.gui.presentation.lesson;

import halfwave.io.BadInputException;
import halfwave.io.lesson.DemonstrationFile;
import halfwave.lesson.Words;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;

/**
 * Titles of demonstrations that lie in files. They are read aside; until then, and where a file
 * cannot be read, it goes by its name. Belongs to the thread of the screen.
 */
public final class LessonTitles {

  private final Executor background;
  private final Executor screen;
  private final Runnable arrived;
  private final Map<Path, Optional<Words>> known = new HashMap<>();

  /**
   * None is known yet.
   *
   * @param background reads
   * @param screen runs what touches panels
   * @param arrived is told when a title was read
   */
  public LessonTitles(Executor background, Executor screen, Runnable arrived) {
    this.background = background;
    this.screen = screen;
    this.arrived = arrived;
  }

  /** What to call a file just now. */
  public String of(Path file, Locale locale) {
    Optional<Words> title = known.get(file);
    if (title == null) {
      title = Optional.empty();
      known.put(file, title);
      background.execute(() -> read(file));
    }
    return title.map(t -> t.in(locale)).orElseGet(() -> String.valueOf(file.getFileName()));
  }

  /** The file was written: it is read anew when it is asked for. */
  public void forget(Path file) {
    known.remove(file);
  }

  private void read(Path file) {
    try {
      Words title = DemonstrationFile.read(file).title();
      screen.execute(
          () -> {
            known.put(file, Optional.of(title));
            arrived.run();
          });
    } catch (BadInputException e) {
      // whoever begins it is told what is wrong with it; in a list it keeps its name
    }
  }
}
