package halfwave.gui.presentation.quiz;

import halfwave.gui.presentation.Wording;
import halfwave.picture.scene.DrawnBench;
import halfwave.quiz.Conclusion;
import halfwave.quiz.Move;
import halfwave.quiz.Visit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Somebody is on a service call, and may do something there. Belongs to the screen's thread. */
public interface Visiting {

  /** The furnace and what was done at it; null where no call is open. */
  @Nullable Visit visit();

  /** The furnace as it should be, at rest; null where no call is open. */
  @Nullable DrawnBench furnace();

  /** Whether something is being done just now: nothing else can be meanwhile. */
  boolean busy();

  /** Whether nothing more can be done at this call. */
  boolean closed();

  /** Whether a conclusion was handed in: then {@link #draft} shows it. */
  default boolean handedIn() {
    return false;
  }

  /** Whether hints may be asked for. */
  boolean hints();

  /** What is said about that line of the log: a hint, what it ruled out; empty where nothing is. */
  List<String> remarks(int line, Wording words);

  /** Does something; what cannot be done is told by {@link #said}. */
  void want(Move move);

  /** Hands a conclusion in. */
  void conclude(Conclusion conclusion);

  /** What is written in the forms and not handed in yet. */
  VisitDraft draft();

  /** Keeps what is written in the forms. */
  void keep(VisitDraft draft);

  /** Why the last wish came to nothing; empty where it came to something. */
  String said(Wording words);
}
