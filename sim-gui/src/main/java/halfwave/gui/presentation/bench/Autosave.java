package halfwave.gui.presentation.bench;

import halfwave.board.BoardSettings;
import halfwave.board.ShippedBoards;
import halfwave.gui.presentation.Keeper;
import halfwave.gui.presentation.RecoveryFolder;
import halfwave.gui.presentation.RecoveryFolder.Found;
import halfwave.io.bench.RecoveryFile;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Keeps a bench that was changed and not saved, in case the program does not end as it should.
 * Belongs to the screen's thread; files are written and removed on another.
 */
public final class Autosave {

  private final Keeper<RecoveryFile> keeper;

  /**
   * Nothing is kept yet.
   *
   * @param folder where
   * @param background writes and removes files, one after the other
   * @param screen runs what touches panels
   */
  public Autosave(RecoveryFolder<RecoveryFile> folder, Executor background, Executor screen) {
    keeper = new Keeper<>(folder, background, screen, RecoveryFile::saved);
  }

  /**
   * Looks for a bench that was left behind.
   *
   * @param ask is told of it, on the screen's thread, if there is one
   * @param then is done afterwards, in every case
   */
  public void look(Consumer<Found<RecoveryFile>> ask, Runnable then) {
    keeper.look(ask, then);
  }

  /** What puts the bench back that was found; until it is kept anew its file stays. */
  public Intent bringBack(Found<RecoveryFile> left) {
    keeper.comesBack();
    RecoveryFile content = left.content();
    var ignition = content.bench().design().ignition();
    BoardSettings board =
        ShippedBoards.named(content.board())
            .filter(b -> b.ignition().fits(ignition))
            .orElseGet(() -> ShippedBoards.standard(ignition));
    return new Intent.BringBack(
        new Intent.Open(content.bench(), board, content.file()), content.saved());
  }

  /** Nobody wants the bench that was found. */
  public void leave() {
    keeper.leave();
  }

  /**
   * Time has passed on the wall.
   *
   * @param state the bench as it is
   * @param nowMillis any clock that does not go back (ms)
   */
  public void tick(State state, long nowMillis) {
    keeper.tick(state.unsaved() ? content(state.own()) : null, nowMillis);
  }

  private static RecoveryFile content(State state) {
    return new RecoveryFile(
        state.moment().bench(),
        state.paper().bench(),
        state.moment().settings().name(),
        state.paper().file());
  }

  /** The program ends as it should. What nobody has decided about is asked about once more. */
  public void end() {
    keeper.end();
  }
}
