package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.presentation.Settings;
import halfwave.gui.presentation.SettingsFile;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.presentation.lesson.LessonModel;
import halfwave.gui.swing.lesson.Projector;
import java.awt.AWTError;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.awt.Rectangle;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.FutureTask;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javax.swing.JFrame;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Assumptions;

/** The real window with an engine of its own, for a test; settings lie in the test's folder. */
public final class OpenWindow implements AutoCloseable {

  /** Nothing takes so long: a test that waits longer hangs, and says so (s). */
  private static final long HANG_SECONDS = 60;

  private final Thread.UncaughtExceptionHandler before =
      Thread.getDefaultUncaughtExceptionHandler();
  private final List<Throwable> uncaught = Collections.synchronizedList(new ArrayList<>());
  private final String home = System.getProperty("user.home");
  private final ExecutorService engine;
  private final ExecutorService background;
  private final Window window;

  private OpenWindow(Path folder, Settings settings) {
    Thread.setDefaultUncaughtExceptionHandler((thread, e) -> uncaught.add(e));
    // where a chooser begins: what is typed into it must not land among the files of a person. The
    // folder has to be there, or a chooser begins where the tests run
    Path there = folder.resolve("home");
    assertThat(there.toFile().isDirectory() || there.toFile().mkdir()).as("%s", there).isTrue();
    System.setProperty("user.home", there.toString());
    SettingsFile file = new SettingsFile(folder.resolve("settings.json"));
    file.write(settings);
    engine = worker("engine");
    background = worker("background");
    window = onScreen(() -> new Window(file, engine, background));
  }

  private static ExecutorService worker(String name) {
    // what still asks for work when the window is gone is not answered, as at the end of the
    // program
    return new ThreadPoolExecutor(
        1,
        1,
        0,
        TimeUnit.SECONDS,
        new LinkedBlockingQueue<>(),
        task -> {
          Thread thread = new Thread(task, name);
          thread.setDaemon(true);
          return thread;
        },
        new ThreadPoolExecutor.DiscardPolicy());
  }

  /** English, light, all cautions read, a flame that stands still. */
  public static final Settings PLAIN =
      Settings.FIRST.withLanguage("en").withCautionsSeen().withMotion(false);

  /** Opens it, waits for the first bench and stops the clock: only a test lets time pass. */
  public static OpenWindow with(Path folder, Settings settings) {
    return given(folder, settings, null);
  }

  /** The same, with a file that a desktop hands over. */
  static OpenWindow given(Path folder, Settings settings, @Nullable Path file) {
    needDisplay();
    OpenWindow made = new OpenWindow(folder, settings);
    onScreen(
        () -> {
          made.window.open(file);
          return null;
        });
    made.await("the first bench", made.window.workbench()::ready);
    made.await("all panels", () -> onScreen(made.window::whole));
    made.want(new Intent.Play(false));
    return made;
  }

  /** The same in a window of that size (px), whatever the screen. */
  static OpenWindow sized(Path folder, Settings settings, int width, int height) {
    OpenWindow made =
        with(folder, settings.withPlace(Settings.Place.at(List.of(0, 0, width, height))));
    made.size(made.frame(), width, height);
    return made;
  }

  /** Makes one of its windows larger or smaller (px). */
  void size(java.awt.Window sized, int width, int height) {
    onScreen(
        () -> {
          sized.setSize(new Dimension(width, height));
          sized.validate();
          return null;
        });
    settle();
  }

  public static OpenWindow plain(Path folder) {
    return with(folder, PLAIN);
  }

  /** Without a display these tests are skipped, unless tools are required. */
  static void needDisplay() {
    boolean there = display();
    assertThat(there || !Boolean.getBoolean("halfwave.requireTools"))
        .as("a display is required (halfwave.requireTools) and missing")
        .isTrue();
    Assumptions.assumeTrue(there, "no display");
  }

  private static boolean display() {
    try {
      return GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
    } catch (HeadlessException | AWTError | NoClassDefFoundError e) {
      return false;
    }
  }

  JFrame frame() {
    return window.frame();
  }

  Window window() {
    return window;
  }

  /** The demonstration of its player. */
  public LessonModel lesson() {
    return window.lesson();
  }

  /** The picture for the wall, if it is there. */
  public @Nullable Projector projector() {
    return window.projector();
  }

  /** Puts the picture on the wall, or takes it away; only on the event thread. */
  public void project(Rectangle place) {
    window.project(place);
  }

  Workbench workbench() {
    return window.workbench();
  }

  public State shown() {
    return onScreen(window.workbench()::shown);
  }

  public void want(Intent... intents) {
    for (Intent intent : intents) {
      onScreen(
          () -> {
            window.workbench().want(intent);
            return null;
          });
    }
    settle();
  }

  /** Does something on the event thread, and waits for what follows from it. */
  void run(Runnable action) {
    onScreen(
        () -> {
          action.run();
          return null;
        });
    settle();
  }

  /** Until what was asked for is computed and shown. */
  public void settle() {
    // an answer may ask for more: three rounds are more than any answer of the window asks
    for (int k = 0; k < 3; k++) {
      try {
        engine.submit(() -> {}).get(HANG_SECONDS, TimeUnit.SECONDS);
      } catch (InterruptedException | ExecutionException | TimeoutException e) {
        throw new AssertionError("the engine does not answer", e);
      }
      onScreen(() -> null);
    }
  }

  /** Waits for something that comes by itself; hangs of the program end the test. */
  public void await(String what, BooleanSupplier there) {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(HANG_SECONDS);
    while (!onScreen(there::getAsBoolean)) {
      if (System.nanoTime() > end) {
        throw new AssertionError("it never came: " + what + "; uncaught: " + uncaught);
      }
      pause();
    }
  }

  private static void pause() {
    try {
      Thread.sleep(10);
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  /** Asks on the event thread, which has to answer. */
  public static <T> T onScreen(Callable<T> question) {
    FutureTask<T> task = new FutureTask<>(question);
    if (EventQueue.isDispatchThread()) {
      task.run();
    } else {
      EventQueue.invokeLater(task);
    }
    try {
      return task.get(HANG_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException | TimeoutException e) {
      throw new AssertionError("the event thread does not answer", e);
    } catch (ExecutionException e) {
      throw new AssertionError(e.getCause());
    }
  }

  /** What no one caught, on any thread, and what the program itself reported as its mistake. */
  List<Throwable> uncaught() {
    return List.copyOf(uncaught);
  }

  @Override
  public void close() throws InvocationTargetException, InterruptedException {
    onScreen(
        () -> {
          for (java.awt.Window other : java.awt.Window.getWindows()) {
            other.setVisible(false);
          }
          window.close();
          return null;
        });
    engine.shutdownNow();
    background.shutdownNow();
    Thread.setDefaultUncaughtExceptionHandler(before);
    System.setProperty("user.home", home);
    assertThat(uncaught).as("uncaught on any thread").isEmpty();
  }
}
