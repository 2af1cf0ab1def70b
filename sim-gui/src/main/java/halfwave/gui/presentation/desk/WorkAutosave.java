package halfwave.gui.presentation.desk;

import halfwave.gui.presentation.Keeper;
import halfwave.gui.presentation.RecoveryFolder;
import halfwave.gui.presentation.RecoveryFolder.Found;
import halfwave.io.quiz.QuizRecoveryFile;
import halfwave.io.quiz.RoutineRecoveryFile;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Keeps what an instructor changed and did not save, in case the program does not end as it should.
 * Belongs to the screen's thread; files are written and removed on another.
 *
 * @param <T> what is kept
 */
public final class WorkAutosave<T> {

  private final Supplier<Optional<T>> unsaved;
  private final Consumer<T> back;
  private final Keeper<T> keeper;

  private WorkAutosave(Supplier<Optional<T>> unsaved, Consumer<T> back, Keeper<T> keeper) {
    this.unsaved = unsaved;
    this.back = back;
    this.keeper = keeper;
  }

  /**
   * Keeps the quiz at the instructor's desk.
   *
   * @param model the desk
   * @param folder where
   * @param background writes and removes files, one after the other
   * @param screen runs what touches panels
   */
  public static WorkAutosave<QuizRecoveryFile> of(
      DeskModel model,
      RecoveryFolder<QuizRecoveryFile> folder,
      Executor background,
      Executor screen) {
    // only what came back can be unsaved before anything else is
    Function<QuizRecoveryFile, Object> origin = content -> "";
    return new WorkAutosave<>(
        () -> model.state().unsavedQuiz(),
        model::bringBack,
        new Keeper<>(folder, background, screen, origin));
  }

  /**
   * Keeps an instructor's own order of work.
   *
   * @param model the order of work
   * @param folder where
   * @param background writes and removes files, one after the other
   * @param screen runs what touches panels
   */
  public static WorkAutosave<RoutineRecoveryFile> of(
      RoutineModel model,
      RecoveryFolder<RoutineRecoveryFile> folder,
      Executor background,
      Executor screen) {
    return new WorkAutosave<>(
        model::unsavedDraft,
        model::bringBack,
        new Keeper<>(folder, background, screen, RoutineRecoveryFile::saved));
  }

  /**
   * Looks for what was left behind.
   *
   * @param ask is told of it, on the screen's thread, if there is anything
   * @param then is done afterwards, in every case
   */
  public void look(Consumer<Found<T>> ask, Runnable then) {
    keeper.look(ask, then);
  }

  /** Puts back what was found; until it is kept anew its file stays. */
  public void bringBack(Found<T> left) {
    keeper.comesBack();
    back.accept(left.content());
  }

  /** Nobody wants what was found. */
  public void leave() {
    keeper.leave();
  }

  /**
   * Time has passed on the wall.
   *
   * @param nowMillis any clock that does not go back (ms)
   */
  public void tick(long nowMillis) {
    keeper.tick(unsaved.get().orElse(null), nowMillis);
  }

  /** The program ends as it should. What nobody has decided about is asked about once more. */
  public void end() {
    keeper.end();
  }
}
