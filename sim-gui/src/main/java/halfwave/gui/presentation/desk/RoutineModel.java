package halfwave.gui.presentation.desk;

import halfwave.grading.Grader;
import halfwave.grading.Outlooks;
import halfwave.grading.Routine;
import halfwave.grading.RoutineTrial;
import halfwave.gui.presentation.Listeners;
import halfwave.gui.presentation.OneByOne;
import halfwave.gui.presentation.Saying;
import halfwave.gui.presentation.Wording;
import halfwave.io.AtomicFile;
import halfwave.io.quiz.Engine;
import halfwave.io.quiz.QuizText;
import halfwave.io.quiz.RoutineFile;
import halfwave.io.quiz.RoutineRecoveryFile;
import halfwave.io.quiz.RoutineText;
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
  private int at = -1;
  private List<RoutineTrial> trials = List.of();

  /**
   * Nothing is written yet.
   *
   * @param background tries it
   * @param screen runs what touches panels
   * @param outlooks what visits may be expected to find
   * @param listeners are told when something changed
   * @param failed is told of an error in the program itself
   */
  public RoutineModel(
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

  /** The step that is being written, from zero; below zero: none. */
  public int at() {
    return at;
  }

  /** Goes to a step. */
  public void choose(int step) {
    at = step;
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
    at = -1;
    trials = List.of();
  }

  /** Opens a file; what is none is told by {@link #said}. */
  public void open(Path file) {
    work.begin(
        watch -> {
          RoutineDraft read = RoutineDraft.of(RoutineFile.readUnfinished(file));
          return () -> began(read);
        });
  }

  /** Writes it to a file, finished or not: what is missing is told. */
  public void save(Path file) {
    RoutineDraft written = draft;
    work.begin(
        watch -> {
          AtomicFile.write(file, RoutineText.of(written.unfinished()));
          return () -> {
            saved = written;
            work.told(
                words -> words.text("desk.written", file.getFileName()) + missing(written, words));
          };
        });
  }

  private static String missing(RoutineDraft written, Wording words) {
    String trouble = written.trouble(words);
    return trouble.isEmpty() ? "" : " " + words.text("routine.unfinished", trouble);
  }

  /** What would be lost if the program ended now; nothing where nothing would. */
  Optional<RoutineRecoveryFile> unsavedDraft() {
    return unsaved()
        ? Optional.of(new RoutineRecoveryFile(draft.unfinished(), saved.unfinished()))
        : Optional.empty();
  }

  /** Goes on with what a program that did not end as it should has left. */
  void bringBack(RoutineRecoveryFile left) {
    began(RoutineDraft.of(left.saved()));
    draft = RoutineDraft.of(left.draft());
    work.say(Saying.NOTHING);
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
