package halfwave.gui.presentation.desk;

import halfwave.grading.CallCheck;
import halfwave.io.quiz.QuizRecoveryFile;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What lies on the instructor's desk.
 *
 * @param bank where calls are taken from; null before it is read
 * @param draft the quiz that is made; null before the bank is read
 * @param saved the quiz as it stands in a file, or as it was begun; null: it stands nowhere
 * @param checks what came of trying its calls
 * @param marked the class that was marked last, or null
 */
public record DeskState(
    @Nullable Quiz bank,
    @Nullable DeskDraft draft,
    @Nullable DeskDraft saved,
    List<CallCheck> checks,
    @Nullable DeskClass marked) {

  /** Nothing. */
  static final DeskState EMPTY = new DeskState(null, null, null, List.of(), null);

  /** Takes copies. */
  public DeskState {
    checks = List.copyOf(checks);
  }

  /** The quiz as it is now; nothing while it has no calls. */
  Optional<Quiz> draftQuiz() {
    return draft == null ? Optional.empty() : draft.quiz();
  }

  /** Whether the quiz was changed and not saved. */
  public boolean unsaved() {
    return !Objects.equals(draft, saved);
  }

  /** What came of trying a call as it is now. */
  Optional<CallCheck> check(ServiceCall call) {
    return checks.stream().filter(c -> c.call().equals(call)).findFirst();
  }

  DeskState opened(Quiz from, DeskDraft quiz) {
    return new DeskState(from, quiz, quiz, List.of(), marked);
  }

  DeskState broughtBack(Quiz from, DeskDraft quiz) {
    return new DeskState(from, quiz, null, List.of(), marked);
  }

  /** What would be lost if the program ended now; empty where nothing would. */
  Optional<QuizRecoveryFile> unsavedQuiz() {
    return bank == null || draft == null || !unsaved()
        ? Optional.empty()
        : Optional.of(draft.kept(bank));
  }

  DeskState saved(@Nullable DeskDraft quiz) {
    return new DeskState(bank, draft, quiz, checks, marked);
  }

  DeskState with(DeskDraft quiz) {
    boolean same = draft != null && draft.marksLike(quiz);
    return new DeskState(bank, quiz, saved, same ? checks : List.of(), marked);
  }

  /** Of a quiz that may have been changed meanwhile. */
  DeskState tried(@Nullable DeskDraft quiz, List<CallCheck> all) {
    boolean same = draft != null && quiz != null && draft.marksLike(quiz);
    return new DeskState(bank, draft, saved, same ? all : List.of(), marked);
  }

  DeskState marked(DeskClass of) {
    return new DeskState(bank, draft, saved, checks, of);
  }
}
