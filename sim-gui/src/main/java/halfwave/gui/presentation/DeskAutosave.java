package halfwave.gui.presentation;

import halfwave.gui.presentation.RecoveryFolder.Found;
import halfwave.io.QuizRecoveryFile;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Keeps a quiz that was changed at the instructor's desk and not saved, in case the program does
 * not end as it should. Belongs to the screen's thread; files are written and removed on another.
 */
public final class DeskAutosave {

  private final DeskModel model;
  private final Keeper<QuizRecoveryFile> keeper;

  /**
   * Nothing is kept yet.
   *
   * @param model the desk
   * @param folder where
   * @param background writes and removes files, one after the other
   * @param screen runs what touches panels
   */
  public DeskAutosave(
      DeskModel model,
      RecoveryFolder<QuizRecoveryFile> folder,
      Executor background,
      Executor screen) {
    this.model = model;
    // only what came back can be unsaved before anything else is
    keeper = new Keeper<>(folder, background, screen, content -> "");
  }

  /** Tells, on the screen's thread, of a quiz that was left behind, if there is one. */
  public void look(Consumer<Found<QuizRecoveryFile>> ask) {
    keeper.look(ask, () -> {});
  }

  /** Puts the quiz that was found on the desk; until it is kept anew its file stays. */
  public void bringBack(Found<QuizRecoveryFile> left) {
    keeper.comesBack();
    model.bringBack(left.content());
  }

  /** Nobody wants the quiz that was found. */
  public void leave() {
    keeper.leave();
  }

  /**
   * Time has passed on the wall.
   *
   * @param nowMillis any clock that does not go back (ms)
   */
  public void tick(long nowMillis) {
    keeper.tick(model.state().unsavedQuiz().orElse(null), nowMillis);
  }

  /** The program ends as it should. What nobody has decided about is asked about once more. */
  public void end() {
    keeper.end();
  }
}
