package halfwave.gui.presentation.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * The one present that all panels show. Intents go in on the screen's thread; what they lead to is
 * computed elsewhere and comes back to it. One computation is in flight; meanwhile intents wait, of
 * one gesture only the newest, and every result is shown.
 */
public final class Workbench {

  /** Longer gaps than this are no time that anyone watched (ms). */
  private static final long LONGEST_PASS_MILLIS = 500;

  private final Executor engine;
  private final Executor screen;
  private final Effects effects = new Effects();
  private final List<Consumer<State>> watchers = new ArrayList<>();
  private final Consumer<Throwable> failed;

  private final Object lock = new Object();
  private final List<Intent> waiting = new ArrayList<>();
  private boolean computing;

  /** Belongs to the engine's thread. */
  private @Nullable State computed;

  /** Belongs to the screen's thread. */
  private @Nullable State shown;

  /**
   * A workbench without a bench: {@link Intent.Open} comes first.
   *
   * @param engine runs computations, one after the other; a test passes {@code Runnable::run}
   * @param screen runs what touches panels
   * @param failed is told of an error in the program itself, on the screen's thread
   */
  public Workbench(Executor engine, Executor screen, Consumer<Throwable> failed) {
    this.engine = engine;
    this.screen = screen;
    this.failed = failed;
  }

  /**
   * Is told every state, from the present one on.
   *
   * @param watcher called on the screen's thread
   * @return ends it
   */
  public Runnable subscribe(Consumer<State> watcher) {
    watchers.add(watcher);
    if (shown != null) {
      watcher.accept(shown);
    }
    return () -> watchers.remove(watcher);
  }

  /** The state that is shown. */
  public State shown() {
    if (shown == null) {
      throw new IllegalStateException("no bench was opened");
    }
    return shown;
  }

  /** Whether there is a state to show. */
  public boolean ready() {
    return shown != null;
  }

  /** Something is wanted. */
  public void want(Intent intent) {
    synchronized (lock) {
      line(intent);
      if (computing) {
        return;
      }
      computing = true;
    }
    engine.execute(this::compute);
  }

  /** What waits is joined by one more, or gives way to it. */
  private void line(Intent intent) {
    int last = waiting.size() - 1;
    if (intent instanceof Intent.Pass pass && last >= 0) {
      if (waiting.get(last) instanceof Intent.Pass before) {
        waiting.set(
            last,
            new Intent.Pass(
                Math.min(LONGEST_PASS_MILLIS, before.wallMillis() + pass.wallMillis())));
        return;
      }
    } else if (intent instanceof Intent.Act act && act.gesture() != 0) {
      for (int k = last; k >= 0; k--) {
        if (waiting.get(k) instanceof Intent.Act before && before.gesture() == act.gesture()) {
          waiting.set(k, act);
          return;
        }
      }
    }
    waiting.add(intent);
  }

  private void compute() {
    List<Intent> taken;
    synchronized (lock) {
      taken = List.copyOf(waiting);
      waiting.clear();
    }
    try {
      State next = computed;
      for (Intent intent : taken) {
        next = next == null ? effects.opened((Intent.Open) intent) : effects.after(next, intent);
      }
      computed = next;
      State result = next;
      screen.execute(() -> show(result));
    } catch (RuntimeException | Error e) {
      screen.execute(() -> failed.accept(e));
    }
    synchronized (lock) {
      if (waiting.isEmpty()) {
        computing = false;
        return;
      }
    }
    engine.execute(this::compute);
  }

  private void show(@Nullable State state) {
    if (state == null) {
      return;
    }
    shown = state;
    List.copyOf(watchers).forEach(watcher -> watcher.accept(state));
  }
}
