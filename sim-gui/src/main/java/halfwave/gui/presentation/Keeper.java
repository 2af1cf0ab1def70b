package halfwave.gui.presentation;

import halfwave.gui.presentation.RecoveryFolder.Found;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Keeps what was changed and not saved, at a pace, until nothing would be lost any more. Belongs to
 * the screen's thread; files are written and removed on another.
 *
 * @param <T> what is kept
 */
public final class Keeper<T> {

  /** From one writing to the next (ms). */
  public static final long PACE_MILLIS = 15_000;

  private final RecoveryFolder<T> folder;
  private final Executor background;
  private final Executor screen;
  private final Function<T, Object> origin;
  private @Nullable T kept;
  private @Nullable Found<T> found;

  /** Whether what was found is on its way to the screen. */
  private boolean comingBack;

  private @Nullable Long keptMillis;

  /**
   * Nothing is kept yet.
   *
   * @param folder where
   * @param background writes and removes files, one after the other
   * @param screen runs what touches panels
   * @param origin what something is a change of: tells whether what came back is there
   */
  public Keeper(
      RecoveryFolder<T> folder, Executor background, Executor screen, Function<T, Object> origin) {
    this.folder = folder;
    this.background = background;
    this.screen = screen;
    this.origin = origin;
  }

  /**
   * Looks for what was left behind.
   *
   * @param ask is told of it, on the screen's thread, if there is anything
   * @param then is done afterwards, in every case
   */
  public void look(Consumer<Found<T>> ask, Runnable then) {
    background.execute(
        () -> {
          Optional<Found<T>> left = folder.find();
          screen.execute(
              () -> {
                left.ifPresent(
                    l -> {
                      found = l;
                      ask.accept(l);
                    });
                then.run();
              });
        });
  }

  /** What was found comes back; until it is kept anew its file stays. */
  public void comesBack() {
    comingBack = true;
  }

  /** Nobody wants what was found. */
  public void leave() {
    Found<T> left = found;
    found = null;
    if (left != null) {
      background.execute(() -> folder.drop(left));
    }
  }

  /**
   * Time has passed on the wall.
   *
   * @param content what would be lost, or null: nothing would
   * @param nowMillis any clock that does not go back (ms)
   */
  public void tick(@Nullable T content, long nowMillis) {
    if (content == null) {
      if (!comingBack) {
        nothingToLose();
      }
      return;
    }
    boolean due = keptMillis == null || nowMillis - keptMillis >= PACE_MILLIS;
    if (due && !content.equals(kept)) {
      kept = content;
      keptMillis = nowMillis;
      background.execute(() -> folder.keep(content));
      if (comingBack && found != null && isOf(found.content(), content)) {
        comingBack = false;
        leave();
      }
    }
  }

  private boolean isOf(T left, T content) {
    return origin.apply(left).equals(origin.apply(content));
  }

  private void nothingToLose() {
    if (kept != null) {
      kept = null;
      background.execute(folder::clear);
    }
  }

  /** The program ends as it should. What nobody has decided about is asked about once more. */
  public void end() {
    folder.end();
    if (comingBack && found != null) {
      folder.drop(found);
    }
  }
}
