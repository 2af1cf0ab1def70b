package halfwave.gui.presentation.lesson;

import halfwave.lesson.Playthrough;
import org.jspecify.annotations.Nullable;

/**
 * Where an instructor stands in a step on the wall: what is said comes first, then the question,
 * then the answer.
 */
public final class Presenter {

  private final LessonModel lesson;
  private @Nullable Integer step;
  private boolean asking;

  /** Nothing is asked yet. */
  public Presenter(LessonModel lesson) {
    this.lesson = lesson;
  }

  /** Whether the question of the present step is out. */
  public boolean asking() {
    Playthrough at = lesson.at();
    Integer now = at == null ? null : at.stepIndex();
    if (now == null || !now.equals(step)) {
      step = now;
      asking = false;
    }
    return asking;
  }

  /** What comes next. */
  public void forward() {
    Playthrough at = lesson.at();
    if (at != null && at.step().question() != null && !at.revealed() && !asking()) {
      asking = true;
    } else {
      lesson.forward();
    }
  }

  /** Back to the question, to what was said, or to the step before. */
  public void back() {
    Playthrough at = lesson.at();
    if (asking() && at != null && !at.revealed()) {
      asking = false;
    } else {
      // an answer that came in the window goes back to its question here as well
      asking |= at != null && at.revealed() && at.step().question() != null;
      lesson.back();
    }
  }
}
