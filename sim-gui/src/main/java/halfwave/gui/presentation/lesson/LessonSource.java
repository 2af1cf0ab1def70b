package halfwave.gui.presentation.lesson;

import halfwave.gui.presentation.Wording;
import halfwave.io.lesson.ShippedDemonstrations;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Draft;
import halfwave.lesson.DraftActs;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A demonstration that can be put on paper or on slides: a shipped one, the one that is being
 * edited, or one in a file. Of the two last values exactly one is there, but for the last source of
 * all, which is any file that is still to be asked for.
 *
 * @param name how it is offered
 * @param demonstration the demonstration itself, or null: it is read when it is chosen
 * @param file where it lies, or null
 */
public record LessonSource(
    String name, @Nullable Demonstration demonstration, @Nullable Path file) {

  /**
   * All there are, in the order in which they are offered.
   *
   * @param edited what is being edited, as it stands, or null
   * @param editedFile the file it came from, or null
   * @param recent files of one's own, the latest first
   */
  public static List<LessonSource> all(
      @Nullable Draft edited, @Nullable Path editedFile, List<Path> recent, Wording words) {
    List<LessonSource> all = new ArrayList<>();
    for (Demonstration shipped : ShippedDemonstrations.all()) {
      all.add(new LessonSource(shipped.title().in(words.locale()), shipped, null));
    }
    // what cannot be played cannot be told either
    if (edited != null && DraftActs.blocked(edited).isEmpty()) {
      Demonstration made = edited.demonstration();
      String title =
          edited.title().blank() ? words.text("paper.untitled") : made.title().in(words.locale());
      all.add(new LessonSource(words.text("paper.edited", title), made, null));
    }
    for (Path file : recent) {
      if (!file.equals(editedFile)) {
        String name = String.valueOf(file.getFileName());
        all.add(new LessonSource(words.text("paper.own", name), null, file));
      }
    }
    all.add(new LessonSource(words.text("paper.other-file"), null, null));
    return all;
  }

  /** Whether it has to be asked which file is meant. */
  public boolean asks() {
    return demonstration == null && file == null;
  }
}
