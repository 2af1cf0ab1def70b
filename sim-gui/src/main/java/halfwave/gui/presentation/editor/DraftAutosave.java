package halfwave.gui.presentation.editor;

import halfwave.gui.presentation.Keeper;
import halfwave.gui.presentation.RecoveryFolder;
import halfwave.gui.presentation.RecoveryFolder.Found;
import halfwave.io.lesson.DraftRecoveryFile;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Keeps a demonstration that was changed in the editor and not saved, in case the program does not
 * end as it should. Belongs to the screen's thread; files are written and removed on another.
 */
public final class DraftAutosave {

  private final EditorModel model;
  private final Keeper<DraftRecoveryFile> keeper;

  /**
   * Nothing is kept yet.
   *
   * @param model the editor
   * @param folder where
   * @param background writes and removes files, one after the other
   * @param screen runs what touches panels
   */
  public DraftAutosave(
      EditorModel model,
      RecoveryFolder<DraftRecoveryFile> folder,
      Executor background,
      Executor screen) {
    this.model = model;
    keeper = new Keeper<>(folder, background, screen, DraftRecoveryFile::saved);
  }

  /**
   * Looks for a draft that was left behind.
   *
   * @param ask is told of it, on the screen's thread, if there is one
   * @param then is done afterwards, in every case
   */
  public void look(Consumer<Found<DraftRecoveryFile>> ask, Runnable then) {
    keeper.look(ask, then);
  }

  /** Opens the editor with the draft that was found; until it is kept anew its file stays. */
  public void bringBack(Found<DraftRecoveryFile> left) {
    keeper.comesBack();
    model.bringBack(left.content());
  }

  /** Nobody wants the draft that was found. */
  public void leave() {
    keeper.leave();
  }

  /**
   * Time has passed on the wall.
   *
   * @param nowMillis any clock that does not go back (ms)
   */
  public void tick(long nowMillis) {
    boolean unsaved = model.open() && model.edits().unsaved();
    keeper.tick(
        unsaved ? new DraftRecoveryFile(model.draft(), model.edits().saved(), model.file()) : null,
        nowMillis);
  }

  /** The program ends as it should. What nobody has decided about is asked about once more. */
  public void end() {
    keeper.end();
  }
}
