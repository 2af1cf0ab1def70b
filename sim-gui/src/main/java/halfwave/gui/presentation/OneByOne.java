package halfwave.gui.presentation;

import halfwave.io.BadInputException;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Work that is done away from the screen's thread, one piece at a time: while one is being done no
 * other is begun. Belongs to the screen's thread.
 */
final class OneByOne {

  /** What is done away from the screen's thread. */
  interface Work {

    /** Does it, and tells what is to be done with it on the screen's thread. */
    Runnable done();
  }

  private final Executor background;
  private final Executor screen;
  private final Consumer<Throwable> failed;
  private final Listeners listeners;
  private boolean busy;
  private Saying said = Saying.NOTHING;

  OneByOne(Executor background, Executor screen, Consumer<Throwable> failed, Listeners listeners) {
    this.background = background;
    this.screen = screen;
    this.failed = failed;
    this.listeners = listeners;
  }

  /** Begins it, where nothing is being done. */
  void begin(Work work) {
    if (busy) {
      return;
    }
    busy = true;
    said = Saying.NOTHING;
    listeners.tell();
    background.execute(
        () -> {
          Runnable then;
          try {
            then = work.done();
          } catch (BadInputException e) {
            then = () -> said = words -> e.line(words.sentences());
          } catch (RuntimeException | Error e) {
            then = () -> failed.accept(e);
          }
          Runnable last = then;
          screen.execute(
              () -> {
                busy = false;
                last.run();
                listeners.tell();
              });
        });
  }

  boolean busy() {
    return busy;
  }

  /** What there is to say of the last work or wish. */
  String said(Wording words) {
    return said.in(words);
  }

  /** The work that was done says this. */
  void told(Saying what) {
    said = what;
  }

  /** Says something at once. */
  void say(Saying what) {
    said = what;
    listeners.tell();
  }
}
