package halfwave.gui.presentation;

import halfwave.grading.Grader;
import halfwave.grading.Outlooks;
import halfwave.grading.Routine;
import halfwave.grading.RoutineTrial;
import halfwave.io.AtomicFile;
import halfwave.io.Engine;
import halfwave.io.QuizText;
import halfwave.io.RoutineFile;
import halfwave.io.RoutineText;
import halfwave.quiz.Appearances;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * An instructor's own order of work: written, saved, and compared with what an expert does. Belongs
 * to the screen's thread.
 */
public final class RoutineModel {

  private final Outlooks outlooks;
  private final OneByOne work;

  private RoutineDraft draft = RoutineDraft.EMPTY;
  private RoutineDraft saved = RoutineDraft.EMPTY;
  private List<RoutineTrial> trials = List.of();

  RoutineModel(
      Executor background,
      Executor screen,
      Outlooks outlooks,
      Listeners listeners,
      Consumer<Throwable> failed) {
    this.outlooks = outlooks;
    work = new OneByOne(background, screen, failed, listeners);
  }

  /** What is written so far. */
  public RoutineDraft draft() {
    return draft;
  }

  /** Whether something was written that is in no file. */
  public boolean unsaved() {
    return !draft.equals(saved);
  }

  /** How it fared on the calls it was compared on; none where it was changed since. */
  public List<RoutineTrial> trials() {
    return trials;
  }

  /** Keeps what is written. */
  public void keep(RoutineDraft written) {
    if (!written.equals(draft)) {
      boolean same = written.steps().equals(draft.steps());
      draft = written;
      trials = same ? trials : List.of();
      work.say(Saying.NOTHING);
    }
  }

  /** A new one. */
  public void fresh() {
    began(RoutineDraft.EMPTY);
    work.say(Saying.NOTHING);
  }

  private void began(RoutineDraft with) {
    draft = with;
    saved = with;
    trials = List.of();
  }

  /** Opens a file; what is none is told by {@link #said}. */
  public void open(Path file) {
    work.begin(
        watch -> {
          RoutineDraft read = RoutineDraft.of(RoutineFile.read(file));
          return () -> began(read);
        });
  }

  /** Whether nothing is missing in it; else {@link #said} tells what. */
  public boolean whole() {
    boolean whole = draft.routine().isPresent();
    if (!whole) {
      work.say(draft::trouble);
    }
    return whole;
  }

  /** Writes it to a file, where nothing is missing in it. */
  public void save(Path file) {
    RoutineDraft written = draft;
    written
        .routine()
        .ifPresentOrElse(
            r ->
                work.begin(
                    watch -> {
                      AtomicFile.write(file, RoutineText.of(r));
                      return () -> {
                        saved = written;
                        work.told(words -> words.text("desk.written", file.getFileName()));
                      };
                    }),
            () -> work.say(written::trouble));
  }

  /** Goes through it on calls of a bank, beside an expert. */
  public void compare(Quiz bank, List<ServiceCall> calls) {
    RoutineDraft written = draft;
    Optional<Routine> routine = written.routine();
    if (routine.isEmpty()) {
      work.say(written::trouble);
      return;
    }
    work.begin(
        watch -> {
          Grader grader = new Grader(bank, QuizText.hash(bank), Engine.text(), outlooks);
          Appearances appearances = new Appearances();
          List<RoutineTrial> all = new ArrayList<>();
          for (ServiceCall call : calls) {
            OneByOne.goOn(watch, all.size(), calls.size());
            all.add(RoutineTrial.of(grader, routine.get(), call, appearances));
          }
          return () -> {
            // it may have been changed meanwhile
            trials = written.steps().equals(draft.steps()) ? List.copyOf(all) : List.of();
            long whole = all.stream().filter(RoutineTrial::whole).count();
            work.told(words -> words.text("routine.compared", whole, all.size()));
          };
        });
  }

  /** Gives up what is being done. */
  public void giveUp() {
    work.giveUp();
  }

  /** Whether something is being done. */
  public boolean busy() {
    return work.busy();
  }

  /** What there is to say: how far the work is, or what came of the last wish. */
  public String said(Wording words) {
    return work.busy() ? work.progress(words) : work.said(words);
  }
}
