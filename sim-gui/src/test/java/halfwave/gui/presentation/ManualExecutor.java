package halfwave.gui.presentation;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.Executor;

/** Computes when a test says so: meanwhile intents wait, as they do behind a slow computation. */
public final class ManualExecutor implements Executor {

  private final Deque<Runnable> tasks = new ArrayDeque<>();

  @Override
  public void execute(Runnable task) {
    tasks.add(task);
  }

  public int waiting() {
    return tasks.size();
  }

  /** Does what waits, and what comes of it. */
  public void run() {
    while (!tasks.isEmpty()) {
      tasks.remove().run();
    }
  }
}
