package halfwave.gui.presentation;

import halfwave.board.BoardSettings;
import halfwave.board.ShippedBoards;
import halfwave.gui.presentation.RecoveryFolder.Found;
import halfwave.io.RecoveryFile;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Keeps a bench that was changed and not saved, in case the program does not end as it should.
 * Belongs to the screen's thread; files are written and removed on another.
 */
public final class Autosave {

  /** From one writing to the next (ms). */
  static final long PACE_MILLIS = 15_000;

  private final RecoveryFolder folder;
  private final Executor background;
  private final Executor screen;
  private @Nullable RecoveryFile kept;
  private @Nullable Found found;

  /** Whether the bench that was found is on its way to the screen. */
  private boolean comingBack;

  private @Nullable Long keptMillis;

  /**
   * Nothing is kept yet.
   *
   * @param folder where
   * @param background writes and removes files, one after the other
   * @param screen runs what touches panels
   */
  public Autosave(RecoveryFolder folder, Executor background, Executor screen) {
    this.folder = folder;
    this.background = background;
    this.screen = screen;
  }

  /** Tells, on the screen's thread, of a bench that was left behind, if there is one. */
  public void look(Consumer<Found> ask) {
    background.execute(
        () ->
            folder
                .find()
                .ifPresent(
                    left ->
                        screen.execute(
                            () -> {
                              found = left;
                              ask.accept(left);
                            })));
  }

  /** What puts the bench back that was found; until it is kept anew its file stays. */
  public Intent bringBack(Found left) {
    comingBack = true;
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
    Found left = found;
    found = null;
    if (left != null) {
      background.execute(() -> folder.drop(left));
    }
  }

  /**
   * Time has passed on the wall.
   *
   * @param state the bench as it is
   * @param nowMillis any clock that does not go back (ms)
   */
  public void tick(State state, long nowMillis) {
    if (!state.unsaved()) {
      if (!comingBack) {
        nothingToLose();
      }
      return;
    }
    boolean due = keptMillis == null || nowMillis - keptMillis >= PACE_MILLIS;
    RecoveryFile content = content(state.own());
    if (due && !content.equals(kept)) {
      kept = content;
      keptMillis = nowMillis;
      background.execute(() -> folder.keep(content));
      if (comingBack && found != null && found.content().saved().equals(content.saved())) {
        comingBack = false;
        leave();
      }
    }
  }

  private void nothingToLose() {
    if (kept != null) {
      kept = null;
      background.execute(folder::clear);
    }
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
    folder.end();
    if (comingBack && found != null) {
      folder.drop(found);
    }
  }
}
